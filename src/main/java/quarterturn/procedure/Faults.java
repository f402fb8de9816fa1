package quarterturn.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The faults found in one file so far. */
final class Faults {
  /** More than anybody mends in one go; a file that is no procedure at all has any number. */
  static final int MOST = 200;

  private final Source source;
  private final List<Fault> found = new ArrayList<>();
  private int more;

  Faults(Source source) {
    this.source = source;
    for (Source.Unshown unshown : source.unshown()) {
      String message =
          unshown.codePoint() == Source.LOST
              ? "a character was lost here (U+FFFD); write it anew"
              : String.format(
                  "a character that cannot be shown (U+%04X); take it out", unshown.codePoint());
      add(source.mark(unshown.offset()), message);
    }
  }

  Source source() {
    return source;
  }

  void add(Mark mark, String message) {
    if (found.size() < MOST) {
      found.add(source.fault(mark, message));
    } else {
      more++;
    }
  }

  boolean none() {
    return found.isEmpty();
  }

  /** Every fault, in the order of the file. */
  List<Fault> sorted() {
    Stream<Fault> sorted = found.stream().sorted(Fault.BY_PLACE).distinct();
    if (more == 0) {
      return sorted.toList();
    }
    String message = "there are " + more + " more faults in this file; mend these first";
    return Stream.concat(sorted, Stream.of(Fault.of(source.mark(0), message))).toList();
  }

  /** All faults with one after which nothing more can be read. */
  Unreadable stop(Mark mark, String message) {
    add(mark, message);
    return new Unreadable(sorted());
  }

  /**
   * Ends the reading of a file.
   *
   * @throws Unreadable when a fault was found
   */
  void check() throws Unreadable {
    if (!none()) {
      throw new Unreadable(sorted());
    }
  }
}
