package quarterturn.fault;

import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import org.jspecify.annotations.Nullable;

/** What stands on a disk: as programs see it, and as a power cut would leave it. */
abstract sealed class Node permits FileNode, FolderNode {
  private final long id;
  private final FileTime created;
  private FileTime modified;

  Node(long id, FileTime created) {
    this.id = id;
    this.created = created;
    this.modified = created;
  }

  /** A copy with nothing left to force: as it is now, or as a power cut leaves it where given. */
  abstract Node left(@Nullable Survival survival);

  abstract long size();

  long id() {
    return id;
  }

  FileTime created() {
    return created;
  }

  void touch(FileTime at) {
    modified = at;
  }

  <N extends Node> N dated(N copy) {
    copy.touch(modified);
    return copy;
  }

  /** What a program is told of it now. */
  BasicFileAttributes seen() {
    return new Seen(id, size(), this instanceof FolderNode, created, modified);
  }

  private record Seen(
      Object fileKey,
      long size,
      boolean isDirectory,
      FileTime creationTime,
      FileTime lastModifiedTime)
      implements BasicFileAttributes {
    @Override
    public FileTime lastAccessTime() {
      return lastModifiedTime;
    }

    @Override
    public boolean isRegularFile() {
      return !isDirectory;
    }

    @Override
    public boolean isSymbolicLink() {
      return false;
    }

    @Override
    public boolean isOther() {
      return false;
    }
  }
}
