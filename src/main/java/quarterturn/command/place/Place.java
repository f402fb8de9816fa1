package quarterturn.command.place;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import quarterturn.unit.NotUnderstoodException;

/** A folder that a person named. */
public final class Place {
  private Place() {}

  /**
   * Whether a folder is there.
   *
   * @param option by which it was named, for the message
   * @param instead what to do about one that can't be it
   * @throws NotUnderstoodException where something else is there, or where nobody can tell
   */
  public static boolean isThere(String option, Path folder, String instead) {
    if (folder.toString().isEmpty()) {
      throw new NotUnderstoodException(option + ": no folder is named", "write one behind it");
    }
    if (Files.isDirectory(folder)) {
      if (!Files.isReadable(folder) || !Files.isExecutable(folder)) {
        throw new NotUnderstoodException(option + ": you may not look into " + folder, instead);
      }
      return true;
    }
    String wrong = wrong(folder);
    if (!wrong.isEmpty()) {
      throw new NotUnderstoodException(option + ": " + wrong, instead);
    }
    return false;
  }

  /** What a person reads where something can't be written. */
  public static IOException unwritable(String option, Path path, String what, IOException e) {
    return new IOException(
        option + ": " + path + " can't be written (" + reason(e) + "); name another " + what, e);
  }

  private static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "no permission";
    }
    if (e instanceof FileAlreadyExistsException there) {
      return there.getFile() + " is there already";
    }
    String reason = e instanceof FileSystemException of ? of.getReason() : e.getMessage();
    return reason == null ? "there is no such place" : reason;
  }

  /** Why no folder can be at a path where none is; empty where one can. */
  private static String wrong(Path folder) {
    for (Path at = folder.toAbsolutePath(); at != null; at = at.getParent()) {
      try {
        Files.readAttributes(at, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      } catch (NoSuchFileException e) {
        continue;
      } catch (IOException e) {
        Path above = at.getParent();
        if (above == null || Files.isDirectory(above)) {
          return folder + " can't be looked at (" + reason(e) + ")";
        }
        continue; // what stands above it is the reason
      }
      if (Files.isDirectory(at)) {
        return "";
      }
      String what = Files.exists(at) ? " is a file, not a folder" : " is a link that leads nowhere";
      return at.equals(folder.toAbsolutePath()) ? folder + what : at + what;
    }
    return "";
  }
}
