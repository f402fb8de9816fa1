package quarterturn.procedure;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where procedures, kinds, hazards and limits are found: first in a folder of the user's own, then
 * among those that come with the program.
 */
public final class Shelf {
  /** Files beside the procedures that are none. */
  private static final Set<String> RESERVED = Set.of("kinds", "results");

  private final @Nullable Path own;

  /**
   * @param own the user's folder, with {@code procedures} and {@code safety} in it, or null
   */
  public Shelf(@Nullable Path own) {
    this.own = own;
  }

  /** A file as found: its name for faults, and what is in it. */
  static final class Found {
    private final String name;
    private final byte[] bytes;

    Found(String name, byte[] bytes) {
      this.name = name;
      this.bytes = bytes;
    }

    String name() {
      return name;
    }

    byte[] bytes() {
      return bytes;
    }
  }

  /**
   * Reads a procedure, those it calls, and all they need.
   *
   * @param procedure its id, or the path of a file ending in {@code .yaml}
   * @throws Unreadable with every fault of all the files
   * @throws FileNotFoundException when there is no such procedure; its message says so
   * @throws IOException when a file cannot be read
   */
  public Library load(String procedure) throws Unreadable, IOException {
    Loading loading = new Loading(this);
    return procedure.toLowerCase(Locale.ROOT).endsWith(".yaml")
        ? loading.load(file(procedure), null)
        : loading.load(named(procedure), procedure);
  }

  private static Found file(String name) throws IOException {
    try {
      Path path = Path.of(name);
      if (Files.isRegularFile(path)) {
        return new Found(name, bytes(Files.newInputStream(path)));
      }
    } catch (InvalidPathException e) {
      throw new FileNotFoundException(Quote.of(name) + " is no path of a file");
    }
    throw new FileNotFoundException("there is no file " + Quote.of(name));
  }

  private Found named(String id) throws IOException {
    Found found = procedure(id);
    if (found == null) {
      throw new FileNotFoundException(noProcedure(id) + ", or give the path of a .yaml file");
    }
    return found;
  }

  /** Says that there is no such procedure, and where it would be looked for. */
  String noProcedure(String id) {
    String where =
        own == null
            ? "those that come with the program"
            : own.resolve("procedures") + " and those that come with the program";
    return "there is no procedure " + Quote.of(id) + " in " + where + "; check its name";
  }

  /** A procedure's file, or null where there is none. */
  @Nullable Found procedure(String id) throws IOException {
    return Scalars.isId(id) && !RESERVED.contains(id) ? find("procedures", id) : null;
  }

  /**
   * A file that must be there.
   *
   * @throws FileNotFoundException when it is not
   */
  Found needed(String folder, String name) throws IOException {
    Found found = find(folder, name);
    if (found == null) {
      throw new FileNotFoundException("the file " + folder + "/" + name + ".yaml is missing");
    }
    return found;
  }

  private @Nullable Found find(String folder, String name) throws IOException {
    String file = name + ".yaml";
    if (own != null) {
      Path path = own.resolve(folder).resolve(file);
      if (Files.isRegularFile(path)) {
        return new Found(path.toString(), bytes(Files.newInputStream(path)));
      }
    }
    String place = folder + "/" + file;
    InputStream in = Shelf.class.getResourceAsStream("/" + place);
    return in == null ? null : new Found(place, bytes(in));
  }

  /** No more than shows that a file is too large. */
  private static byte[] bytes(InputStream in) throws IOException {
    try (in) {
      return in.readNBytes(Source.MOST_BYTES + 1);
    }
  }
}
