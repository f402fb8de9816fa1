package quarterturn.session.store.archive;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Names;
import quarterturn.unit.NotUnderstoodException;

/**
 * A file that a data folder keeps.
 *
 * @param name of its session or instrument, by {@link Names#check}: no other leads anywhere
 */
public record Kept(Part part, String name) {
  /** The file of a name in a part's folder, or null where no file of ours is called so. */
  static @Nullable Kept of(Part part, String file) {
    if (!file.endsWith(part.ending())) {
      return null;
    }
    String name = file.substring(0, file.length() - part.ending().length());
    try {
      // A name is written in one way only, so that no two of them are one file.
      return Names.check("a file", name).equals(name) ? new Kept(part, name) : null;
    } catch (NotUnderstoodException e) {
      return null;
    }
  }

  /** The file of a path as {@link #path} gives it, or null where it is none. */
  static @Nullable Kept of(String path) {
    for (Part part : Part.values()) {
      String folder = part.folder() + "/";
      if (path.startsWith(folder)) {
        return of(part, path.substring(folder.length()));
      }
    }
    return null;
  }

  /** Its path from the data folder, the same on every system. */
  public String path() {
    return part.folder() + "/" + name + part.ending();
  }

  Path in(Path data) {
    return data.resolve(part.folder()).resolve(name + part.ending());
  }
}
