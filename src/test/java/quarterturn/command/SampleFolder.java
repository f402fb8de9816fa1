package quarterturn.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import quarterturn.session.Event;
import quarterturn.session.store.Store;

/** A copy of the samples of the first version, to work in. */
public record SampleFolder(Path root) {
  static final Path SAMPLES = Path.of("src/test/resources/quarterturn/samples/v1");

  private static final String KINDS = "kinds/procedures/kinds.yaml";

  public static SampleFolder copied(Path to) throws IOException {
    try (Stream<Path> all = Files.walk(SAMPLES)) {
      for (Path from : all.toList()) {
        Path copy = to.resolve(SAMPLES.relativize(from).toString());
        if (Files.isDirectory(from)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(from, copy);
        }
      }
    }
    // The windows are those of the time, in whatever folder of the user's own.
    for (String own : List.of("own", "wordless")) {
      Files.copy(to.resolve(KINDS), to.resolve(own).resolve("procedures/kinds.yaml"));
    }
    return new SampleFolder(to);
  }

  public Path in(String path) {
    return root.resolve(path);
  }

  public String text(String path) throws IOException {
    return Files.readString(in(path));
  }

  public Store store() {
    return Store.at(in("data"));
  }

  public List<Event> events(String session) throws IOException {
    return store().read(session).events();
  }
}
