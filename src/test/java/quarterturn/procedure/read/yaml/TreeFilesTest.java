package quarterturn.procedure.read.yaml;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is read in place of the YAML is what a parser reads there. */
class TreeFilesTest {
  private static List<Path> files() throws Exception {
    try (Stream<Path> all =
        Stream.concat(Files.walk(Path.of("procedures")), Files.walk(Path.of("safety")))) {
      return all.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private static byte[] kept(Path file) throws Exception {
    String place = "/" + TreeFile.name(file.toString().replace('\\', '/'));
    try (var in = TreeFilesTest.class.getResourceAsStream(place)) {
      assertWithMessage(place).that(in).isNotNull();
      return in.readAllBytes();
    }
  }

  private static Faults read(Path file, byte[] yaml) throws Exception {
    return new Faults(Source.of(file.toString(), yaml));
  }

  @Test
  void everyTreeIsThatOfItsFile() throws Exception {
    List<Path> files = files();
    assertThat(files.size()).isAtLeast(30);
    for (Path file : files) {
      byte[] yaml = Files.readAllBytes(file);
      Faults quick = new Faults(Source.of(file.toString(), yaml, kept(file)));
      assertWithMessage(file.toString()).that(quick.tree()).isEqualTo(read(file, yaml).tree());
    }
  }

  @Test
  void aTreeOfAnotherStateIsNotTaken() throws Exception {
    Path file = Path.of("safety", "limits.yaml");
    byte[] yaml = (Files.readString(file) + "# more\n").getBytes(UTF_8);
    Source source = Source.of(file.toString(), yaml, kept(file));
    assertThat(source.text()).endsWith("# more\n");
    assertThat(new Faults(source).tree()).isEqualTo(read(file, yaml).tree());
  }
}
