package quarterturn.procedure.read;

import java.io.IOException;
import java.util.List;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Outline;
import quarterturn.procedure.UnreadableException;

/** The rules that come with the program, which are read once, when they are first asked for. */
final class ProgramRules {
  private ProgramRules() {}

  /** All of them. */
  static Rules all() {
    return All.RULES;
  }

  /** The limits and results alone, which take a fraction of the time. */
  static Outline outline() {
    return Alone.OUTLINE;
  }

  private static final class All {
    static final Rules RULES = read(Loading::rules);
  }

  private static final class Alone {
    static final Outline OUTLINE = read(Loading::outline);
  }

  /** Reads a part of them. */
  private interface Reading<T> {
    T of(Loading loading) throws UnreadableException, IOException;
  }

  private static <T> T read(Reading<T> reading) {
    try {
      Loading loading = new Loading(new Shelf(null));
      T read = reading.of(loading);
      List<Fault> faults = loading.faults();
      if (!faults.isEmpty()) {
        throw new UnreadableException(faults);
      }
      return read;
    } catch (IOException | UnreadableException e) {
      throw new IllegalStateException("the program's own files can't be read", e);
    }
  }
}
