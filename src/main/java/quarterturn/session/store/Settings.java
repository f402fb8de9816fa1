package quarterturn.session.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import quarterturn.platform.UserFolders;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.read.OwnFile;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.procedure.read.yaml.Source;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.Worded;

/**
 * What a person's {@code settings.yaml} sets.
 *
 * @param set the values that can be used; folders as whole paths
 * @param faults what is wrong with the file, in its order
 */
public record Settings(Map<Key, String> set, List<Fault> faults) {
  private static final Settings NONE = new Settings(Map.of(), List.of());
  private static final int LONGEST_NAME = 60;

  public Settings {
    set = Map.copyOf(set);
    faults = List.copyOf(faults);
  }

  /** The keys of the file, each with an option of the same name. */
  public enum Key implements Worded {
    OWN("own files in "),
    BY("work by "),
    ROLE("as "),
    DATA("sessions in ");

    private final String said;

    Key(String said) {
      this.said = said;
    }
  }

  /**
   * Reads the file.
   *
   * @param overridden keys whose values an option gives, so that those in the file are not used
   */
  public static Settings read(UserFolders folders, Set<Key> overridden) {
    Path file = folders.settings();
    try {
      if (file == null || !OwnFile.stands(file)) {
        return NONE;
      }
      Faults faults = new Faults(Source.of(file.toString(), bytes(file)));
      boolean says =
          faults.source().text().lines().anyMatch(l -> !l.isBlank() && !l.strip().startsWith("#"));
      return says ? read(file, faults, folders, overridden) : NONE;
    } catch (UnreadableException e) {
      return new Settings(Map.of(), e.faults());
    } catch (IOException e) {
      String why = e instanceof FileSystemException of ? of.getReason() : e.getMessage();
      Mark mark = new Mark(String.valueOf(file), 1, 1);
      String wrong = "the settings can't be read: " + why;
      return new Settings(Map.of(), List.of(Fault.of(Slip.NOT_YAML, mark, wrong, "")));
    }
  }

  private static byte[] bytes(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(Source.MOST_BYTES + 1);
    }
  }

  private static Settings read(Path file, Faults faults, UserFolders folders, Set<Key> overridden)
      throws UnreadableException {
    MappingKeys keys = MappingKeys.ofFile(faults);
    Scalars values = new Scalars(faults);
    Map<Key, String> set = new EnumMap<>(Key.class);
    for (Key key : Key.values()) {
      var node = keys.optional(key.word());
      String value =
          overridden.contains(key)
              ? null
              : values.parsed(
                  node,
                  text ->
                      switch (key) {
                        case BY -> name(text);
                        case ROLE -> role(text);
                        case OWN, DATA -> folder(text, file, folders);
                      });
      if (value != null) {
        set.put(key, value);
      }
    }
    keys.end();
    return new Settings(set, faults.sorted());
  }

  /**
   * A person's name.
   *
   * @throws NotUnderstoodException where it can be none
   */
  public static String name(String typed) {
    String name = typed.strip();
    if (name.isEmpty() || name.length() > LONGEST_NAME || !name.equals(Printable.of(name))) {
      throw new NotUnderstoodException(
          Quote.of(name) + " is no name",
          "write it on one line, with at most " + LONGEST_NAME + " characters");
    }
    return name;
  }

  private static String role(String text) {
    List<String> roles = Worded.words(Role.values());
    String role = text.strip().toLowerCase(Locale.ROOT);
    if (!roles.contains(role)) {
      throw new NotUnderstoodException(
          Quote.of(text) + " is no role", "write " + String.join(" or ", roles));
    }
    return role;
  }

  /** The folder that a text names, seen from the file or, behind a tilde, from the home folder. */
  private static String folder(String text, Path file, UserFolders folders) {
    boolean home = text.equals("~") || text.startsWith("~/") || text.startsWith("~\\");
    Path folder;
    try {
      folder =
          home
              ? folders.home().resolve(text.substring(Math.min(2, text.length())))
              : file.resolveSibling(text);
    } catch (InvalidPathException e) {
      throw new NotUnderstoodException(Quote.of(text) + " is no path of a folder", "write another");
    }
    if (!Files.isDirectory(folder)) {
      throw new NotUnderstoodException(
          "there is no folder " + folder.normalize(), "make it, or write the path of another");
    }
    return folder.normalize().toString();
  }

  /** One line on what the file sets of these keys; none where that is nothing. */
  public List<String> said(Key... keys) {
    List<String> said = new ArrayList<>();
    for (Key key : keys) {
      if (set.containsKey(key)) {
        said.add(key.said + set.get(key));
      }
    }
    return said.isEmpty()
        ? List.of()
        : List.of(Printable.of("From settings.yaml: " + String.join(", ", said) + "."));
  }

  /**
   * These, where nothing is wrong with them.
   *
   * @throws NotUnderstoodException with a line for each fault
   */
  public Settings sound() {
    if (!faults.isEmpty()) {
      throw new NotUnderstoodException(
          String.join("\n", faults.stream().map(Fault::brief).toList()));
    }
    return this;
  }
}
