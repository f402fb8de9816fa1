package quarterturn.procedure;

import java.util.ArrayList;
import java.util.List;

/** The faults found in one file so far. */
final class Faults {
  private final Source source;
  private final List<Fault> found;

  Faults(Source source) {
    this.source = source;
    this.found = new ArrayList<>(source.unshown());
  }

  Source source() {
    return source;
  }

  void add(Mark mark, String message) {
    found.add(source.fault(mark, message));
  }

  boolean none() {
    return found.isEmpty();
  }

  /** Every fault, in the order of the file. */
  List<Fault> sorted() {
    return found.stream().sorted(Fault.BY_PLACE).distinct().toList();
  }

  /** All faults with a last one, after which nothing more can be read. */
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
