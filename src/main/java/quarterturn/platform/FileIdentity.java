package quarterturn.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import org.jspecify.annotations.Nullable;

/**
 * What tells a file from another that takes its place.
 *
 * @param key device and number of the file; null where the system gives none, as on Windows
 * @param created used only where there is no key. Windows gives a file made soon after another of
 *     its name was deleted the time of that one, so the contents have to be compared too.
 */
public record FileIdentity(@Nullable Object key, FileTime created) {
  public static FileIdentity of(Path file) throws IOException {
    BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
    return new FileIdentity(found.fileKey(), found.creationTime());
  }

  public boolean same(FileIdentity other) {
    return key != null && other.key != null ? key.equals(other.key) : created.equals(other.created);
  }
}
