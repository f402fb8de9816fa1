package quarterturn.session.listing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * What tells that a file has not changed since it was read.
 *
 * @param sort whether it is a file, a link, or a folder or something else
 * @param size in bytes
 * @param modified when it was last written, in nanoseconds since 1970
 * @param key goes with the file's device and number; 0 where the system gives none
 */
public record IndexStamp(Sort sort, long size, long modified, int key) {
  /** What stands under a name. */
  public enum Sort {
    FILE,
    LINK,
    OTHER
  }

  /**
   * Whether both are equal. A record's own equals would be linked at every start, which is slow.
   */
  boolean same(@Nullable IndexStamp other) {
    return other != null
        && sort == other.sort
        && size == other.size
        && modified == other.modified
        && key == other.key;
  }

  /**
   * The stamp of what stands at a path; of a link, that of the file it leads to.
   *
   * @throws IOException where nothing stands there, or a link leads nowhere
   */
  static IndexStamp of(Path path) throws IOException {
    BasicFileAttributes found =
        Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    boolean link = found.isSymbolicLink();
    if (link) {
      found = Files.readAttributes(path, BasicFileAttributes.class);
    }
    Object key = found.fileKey();
    return new IndexStamp(
        !found.isRegularFile() ? Sort.OTHER : link ? Sort.LINK : Sort.FILE,
        found.size(),
        found.lastModifiedTime().to(TimeUnit.NANOSECONDS),
        key == null ? 0 : key.hashCode());
  }
}
