package quarterturn.procedure.read;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * A file in a folder of the user's own. One that stands there and cannot be read is an error: what
 * comes with the program never quietly takes its place.
 */
public final class OwnFile {
  private OwnFile() {}

  /**
   * Whether a file stands in a folder of the user's own.
   *
   * @param file its path from that folder
   * @throws FileSystemException where something else stands there, or on the way to it
   */
  static boolean stands(Path own, Path file) throws IOException {
    Path place = own;
    for (int i = 0; i < file.getNameCount(); i++) {
      place = place.resolve(file.getName(i));
      if (!stands(place, i < file.getNameCount() - 1)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether a plain file stands at {@code place}.
   *
   * @throws FileSystemException where something else stands there
   */
  public static boolean stands(Path place) throws IOException {
    return stands(place, false);
  }

  private static boolean stands(Path place, boolean folder) throws IOException {
    BasicFileAttributes found;
    try {
      Files.readAttributes(place, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    } catch (NoSuchFileException e) {
      return false;
    } catch (IOException e) {
      throw refused(place, "what stands here cannot be looked at");
    }
    try {
      found = Files.readAttributes(place, BasicFileAttributes.class);
    } catch (IOException e) {
      throw refused(place, "the link that stands here leads nowhere");
    }
    if (folder ? !found.isDirectory() : !found.isRegularFile()) {
      String plain = folder ? "no folder stands here" : "no plain file stands here";
      throw refused(place, found.isDirectory() ? "a folder stands here" : plain);
    }
    if (!Files.isReadable(place)) {
      throw refused(place, "you may not read what stands here");
    }
    return true;
  }

  private static FileSystemException refused(Path place, String what) {
    return new FileSystemException(
        place.toString(), null, what + ". Put what can be read in its place, or take it away");
  }
}
