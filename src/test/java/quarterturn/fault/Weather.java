package quarterturn.fault;

import org.jspecify.annotations.Nullable;

/** Decides what befalls each call to a disk. */
interface Weather {
  /** What a program asks of a disk. */
  enum Call {
    OPEN,
    CLOSE,
    READ,
    WRITE,
    TRUNCATE,
    FORCE,
    SIZE,
    LOCK,
    LOOK,
    LIST,
    MAKE,
    DELETE,
    MOVE,
    SET
  }

  /** A disk on which nothing goes wrong. */
  Weather FINE = (call, path, bytes) -> Fate.FINE;

  /**
   * What becomes of a call. It may also throw a {@link PowerCut}.
   *
   * @param bytes how many a write has; 1 where a file or folder would be made, else 0
   */
  Fate of(Call call, String path, int bytes);

  /**
   * What becomes of a call.
   *
   * @param done whether it has its effect
   * @param bytes at most so many of a write are taken
   * @param failure what the exception says, or null where there is none
   */
  record Fate(boolean done, int bytes, @Nullable String failure) {
    static final Fate FINE = new Fate(true, Integer.MAX_VALUE, null);
    static final Fate FAILS = new Fate(false, 0, "Input/output error");
    static final Fate FAILS_THOUGH_DONE = new Fate(true, Integer.MAX_VALUE, "Input/output error");

    static Fate torn(int bytes, @Nullable String failure) {
      return new Fate(bytes > 0, bytes, failure);
    }
  }
}
