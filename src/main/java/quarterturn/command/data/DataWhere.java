package quarterturn.command.data;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import quarterturn.command.place.Placed;
import quarterturn.session.store.Settings;
import quarterturn.session.store.Settings.Key;
import quarterturn.session.store.archive.Bytes;
import quarterturn.session.store.archive.DataFolder;
import quarterturn.session.store.archive.Part;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/** {@code data where}. */
@Command(
    addMethodSubcommands = false,
    name = "where",
    description = {
      "Says where your sessions and instruments, your settings and your own files lie, how much",
      "there is, and whether it is there. It reads names only: see data check."
    })
final class DataWhere extends Placed {
  @Override
  public Integer call() {
    List<String> lines = new ArrayList<>();
    Path data = data(lines);
    long bytes = 0;
    for (Part part : Part.values()) {
      bytes += part(data, part, lines);
    }
    lines.add("size: " + Bytes.words(bytes));
    lines.add("settings: " + settings());
    lines.add("own: " + own());
    lines.add("lessons: each in the folder named for it; no list is kept");
    return print(lines.stream().map(Printable::of).toList());
  }

  private @Nullable Path data(List<String> lines) {
    Path data;
    try {
      data = where.knownData();
    } catch (NotUnderstoodException e) {
      lines.add("data: unknown; " + e.getMessage());
      return null;
    }
    lines.add(
        "data: "
            + (data == null
                ? "unknown, since the settings are wrong; mend them, or say --data DIR"
                : data.toAbsolutePath().normalize() + state(data, true)));
    return data;
  }

  private static long part(@Nullable Path data, Part part, List<String> lines) {
    String name = part.folder() + ": ";
    if (data == null) {
      lines.add(name + "unknown");
      return 0;
    }
    try {
      DataFolder folder = DataFolder.at(data, part);
      int others = folder.strays().size();
      lines.add(name + folder.kept().size() + (others == 0 ? "" : ", and " + others + " not read"));
      return folder.bytes();
    } catch (IOException e) {
      lines.add(name + "unknown, since the folder can't be listed");
      return 0;
    }
  }

  private String settings() {
    Path file = where.folders().settings();
    if (file == null) {
      return "none, since the home folder is unknown";
    }
    return file
        + (where.settings().faults().isEmpty() ? state(file, false) : " (wrong: see settings)");
  }

  private String own() {
    Settings settings = where.settings();
    String typed = where.typed().get(Key.OWN);
    String own = typed != null ? typed : settings.set().get(Key.OWN);
    if (own == null) {
      return "none";
    }
    return Path.of(own).toAbsolutePath().normalize() + state(Path.of(own), true);
  }

  /** What is to be said of a place, beside where it is. */
  private static String state(Path place, boolean folder) {
    if (Files.notExists(place, LinkOption.NOFOLLOW_LINKS)) {
      return " (not there)";
    }
    if (folder ? !Files.isDirectory(place) : !Files.isRegularFile(place)) {
      return folder ? " (no folder)" : " (no plain file)";
    }
    return Files.isReadable(place) ? "" : " (can't be read)";
  }
}
