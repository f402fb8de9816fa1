package quarterturn.command.place;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import quarterturn.session.store.Settings;
import quarterturn.session.store.Settings.Key;
import quarterturn.unit.NotUnderstoodException;

/** Where a user's files lie, each in words that say whether it is there. */
public record Places(Where where) {
  /** The folder for sessions and instruments. */
  public String data() {
    try {
      Path data = where.knownData();
      return data == null
          ? "unknown, since the settings are wrong; mend them, or say --data DIR"
          : data.toAbsolutePath().normalize() + state(data, true);
    } catch (NotUnderstoodException e) {
      return "unknown; " + e.getMessage();
    }
  }

  /** The file of settings. */
  public String settings() {
    Path file = where.folders().settings();
    if (file == null) {
      return "none, since the home folder is unknown";
    }
    return file
        + (where.settings().faults().isEmpty() ? state(file, false) : " (wrong: see settings)");
  }

  /** The folder of the user's own procedures and limits. */
  public String own() {
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
