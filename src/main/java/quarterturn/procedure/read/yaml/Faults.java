package quarterturn.procedure.read.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Quote;

/** The faults found in one file so far. */
public final class Faults {
  /** Most faults that are kept: more than anybody mends in one go. */
  static final int MOST = 200;

  private final Source source;
  private final Map<String, Source> others = new LinkedHashMap<>();
  private final List<Fault> found = new ArrayList<>();
  private int more;

  public Faults(Source source) {
    this.source = source;
    for (Source.Unshown unshown : source.unshown()) {
      boolean lost = unshown.codePoint() == Source.LOST;
      add(
          Slip.CONTROL_CHARACTER,
          source.mark(unshown.offset()),
          lost
              ? "a character was lost here (U+FFFD)"
              : String.format("a character that cannot be shown (U+%04X)", unshown.codePoint()),
          lost ? "Write it anew" : "Take it out");
    }
  }

  public Source source() {
    return source;
  }

  /**
   * The one document of the file.
   *
   * @throws UnreadableException when it is no YAML of one document
   */
  public Node tree() throws UnreadableException {
    Node known = source.tree();
    return known == null ? TreeReader.read(this) : known;
  }

  /** Adds a file of which parts stand in this one, with what is wrong with it. */
  public void including(Faults other) {
    if (others.put(other.source.file(), other.source) == null) {
      found.addAll(other.found);
    }
  }

  /** Adds what is wrong with a file of which parts should stand in this one. */
  public void including(List<Fault> faults) {
    found.addAll(faults);
  }

  /** This file and those of which parts stand in it. */
  public List<Source> sources() {
    return Stream.concat(Stream.of(source), others.values().stream()).toList();
  }

  /** The file in which a place is. */
  public Source source(Mark mark) {
    return others.getOrDefault(mark.file(), source);
  }

  public void add(Slip slip, Mark mark, String wrong, String mend) {
    if (found.size() < MOST) {
      found.add(source(mark).fault(slip.word(), mark, wrong, mend, List.of()));
    } else {
      more++;
    }
  }

  /** Adds the fault of a value that cannot be. */
  public void value(Mark mark, String wrong, String mend) {
    add(Slip.BAD_VALUE, mark, wrong, mend);
  }

  /** Adds the fault of an id that was used before. */
  public void twice(Node.Scalar id, String what, String mend) {
    add(Slip.BAD_ID, id.mark(), what + Quote.of(id.text()) + " stands here a second time", mend);
  }

  /** Whether there are so many that further ones are only counted. */
  public boolean many() {
    return found.size() >= MOST;
  }

  public boolean none() {
    return found.isEmpty();
  }

  /**
   * Every fault, in the order of the file. Ids that are not found are left out where a file that
   * may have them can't be read.
   */
  public List<Fault> sorted() {
    boolean torn =
        found.stream()
            .anyMatch(
                fault ->
                    fault.rule().equals(Slip.NOT_YAML.word())
                        && !fault.mark().file().equals(source.file()));
    Stream<Fault> sorted =
        found.stream()
            .filter(fault -> !torn || !fault.rule().equals(Slip.UNKNOWN_ID.word()))
            .sorted(Fault.BY_PLACE)
            .distinct();
    if (more == 0) {
      return sorted.toList();
    }
    Fault rest =
        Fault.of(
            Slip.NOT_YAML,
            source.mark(0),
            "there are " + more + " more faults in this file",
            "Mend these first");
    return Stream.concat(sorted, Stream.of(rest)).toList();
  }

  /** All faults so far with one after which nothing more can be read. */
  UnreadableException stop(Mark mark, String wrong, String mend) {
    add(Slip.NOT_YAML, mark, wrong, mend);
    return new UnreadableException(sorted());
  }

  /**
   * Ends the reading of a file.
   *
   * @throws UnreadableException when a fault was found
   */
  public void check() throws UnreadableException {
    if (!none()) {
      throw new UnreadableException(sorted());
    }
  }
}
