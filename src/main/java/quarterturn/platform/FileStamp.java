package quarterturn.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A file as one look at it found it. One with the same stamp as before was not written to since, or
 * within the same tick of the system's clock at most, which takes a few milliseconds where times
 * are {@link #exact}. What was changed in that tick shows by its sum when the file is read.
 *
 * @param changed when anything about it was changed, which no program can set back; null where the
 *     system does not tell, as on Windows
 */
public record FileStamp(
    FileIdentity identity,
    boolean folder,
    long size,
    FileTime modified,
    @Nullable FileTime changed) {
  private static final String VIEW = "unix";
  private static final String CHANGED = "ctime";

  public static FileStamp of(Path file) throws IOException {
    if (!file.getFileSystem().supportedFileAttributeViews().contains(VIEW)) {
      BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
      return new FileStamp(
          new FileIdentity(found.fileKey(), found.creationTime()),
          found.isDirectory(),
          found.size(),
          found.lastModifiedTime(),
          null);
    }
    Map<String, Object> found =
        Files.readAttributes(
            file, VIEW + ":fileKey,creationTime,isDirectory,size,lastModifiedTime," + CHANGED);
    return new FileStamp(
        new FileIdentity(found.get("fileKey"), value(found, "creationTime", FileTime.class)),
        value(found, "isDirectory", Boolean.class),
        value(found, "size", Long.class),
        value(found, "lastModifiedTime", FileTime.class),
        (FileTime) found.get(CHANGED));
  }

  private static <T> T value(Map<String, Object> found, String name, Class<T> type) {
    return type.cast(Objects.requireNonNull(found.get(name), name));
  }

  /** Whether nothing about it has changed; an answer waits for this, so nothing is to be linked. */
  public boolean same(FileStamp other) {
    return Objects.equals(identity.key(), other.identity.key())
        && identity.created().equals(other.identity.created())
        && folder == other.folder
        && size == other.size
        && modified.equals(other.modified)
        && Objects.equals(changed, other.changed);
  }

  /**
   * Whether its times tell more than whole seconds. Where they don't, as on some sticks, two
   * writings within one second look alike.
   */
  public boolean exact() {
    return modified.toInstant().getNano() != 0;
  }
}
