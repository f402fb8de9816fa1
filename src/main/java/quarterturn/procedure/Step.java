package quarterturn.procedure;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Turn;

/** One step of a procedure: it does one thing and has an id. */
public sealed interface Step {
  String id();

  Words words();

  Mark mark();

  /** What is put on record here that the program asks for again, or null. */
  default @Nullable Recorded records() {
    return null;
  }

  /**
   * Something to do or look at, confirmed when done.
   *
   * @param changes the change this makes to the instrument, or null
   */
  record Tell(
      String id,
      Words words,
      Mark mark,
      Set<Fact> establishes,
      @Nullable String changes,
      Branch.Fork then)
      implements Step {
    /** One that changes nothing of the instrument. */
    public Tell(String id, Words words, Mark mark, Set<Fact> establishes, Branch.Fork then) {
      this(id, words, mark, establishes, null, then);
    }
  }

  /**
   * One of named answers, the ordinary one first.
   *
   * @param gives the result that is a verdict and is given here, or null
   */
  record Choose(
      String id,
      Words words,
      Mark mark,
      List<Option> options,
      @Nullable String gives,
      @Nullable Recorded records)
      implements Step {
    /** One that gives no verdict and whose answer the program does not ask for again. */
    public Choose(String id, Words words, Mark mark, List<Option> options) {
      this(id, words, mark, options, null, null);
    }
  }

  /**
   * One answer of a {@link Choose}.
   *
   * @param changes the change to the instrument that it tells of, or null
   */
  record Option(
      String id, String label, Set<Fact> establishes, @Nullable String changes, String go) {
    /** One that tells of no change. */
    public Option(String id, String label, Set<Fact> establishes, String go) {
      this(id, label, establishes, null, go);
    }
  }

  /** Something to be written down in words, one line. */
  record Note(String id, Words words, Mark mark, @Nullable Recorded records, String go)
      implements Step {}

  /**
   * A short list at which a technician says once more what stands, before something is hard to take
   * back. Whoever is led step by step passes it.
   *
   * @param lines at most {@link #MOST_LINES}
   */
  record Pause(String id, Words words, Mark mark, List<Line> lines, String go) implements Step {
    /** More is not gone through, but ticked off. */
    public static final int MOST_LINES = 9;

    public Pause {
      lines = List.copyOf(lines);
    }
  }

  /** One line of a {@link Pause}: what is to be said, never just "ok". */
  sealed interface Line {
    /** The answer given at a step. */
    record OfChoice(String step) implements Line {}

    /** The last reading on a string. */
    record OfReading(Quantity quantity, Which which) implements Line {}

    /** Which way the rod goes next. */
    record OfDirection() implements Line {
      public static final String WORD = "direction";
    }
  }

  /** A screw or a slide set anew on every string whose reading is out of its window. */
  record Adjust(String id, Words words, Mark mark, Adjustment adjustment, Branch.Fork then)
      implements Step {}

  /**
   * A reading.
   *
   * @param least smallest plausible value in the quantity's unit
   * @param most largest plausible value
   * @param step the gauge's step
   */
  record Measure(
      String id,
      Words words,
      Mark mark,
      Quantity quantity,
      @Nullable Which which,
      double least,
      double most,
      double step,
      Branch.Fork then)
      implements Step {}

  /** A named calculation of {@code craft}; asks nothing and branches on what it found. */
  record Compute(String id, Words words, Mark mark, Calculation calculation, Branch.Fork then)
      implements Step {}

  /** What a {@link Compute} works out. */
  enum Calculation {
    /** The reading against the window, and the turn it asks for. */
    ADVICE("advice"),
    /** What the neck did after the last turn. */
    RESPONSE("response"),
    /** The lowest string against the highest, or one reading against the one before it. */
    COMPARISON("comparison");

    private final String word;

    Calculation(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** A turn of the truss rod. */
  record TurnRod(
      String id, Words words, Mark mark, Amount amount, Turn limit, Map<Feel, String> felt)
      implements Step {
    public TurnRod {
      felt = Map.copyOf(felt);
    }
  }

  /** How far a {@link TurnRod} goes. */
  sealed interface Amount {
    /** As the advisor says. */
    record Advised() implements Amount {}

    /** The exact opposite of the last turn. */
    record Undo() implements Amount {}

    /** A fixed amount, plus tightens. */
    record Fixed(Turn turn) implements Amount {}
  }

  /**
   * A time to let pass.
   *
   * @param minutes how long, in minutes
   * @param rest whether this is the daily rest, which only a technician may lift, with a reason
   */
  record Wait(
      String id,
      Words words,
      Mark mark,
      int minutes,
      boolean rest,
      Set<Fact> establishes,
      String go)
      implements Step {}

  /** Another procedure, then on by how it ended. */
  record Call(String id, Words words, Mark mark, String procedure, Branch.Fork then)
      implements Step {}

  /** The end, with the work done or left in order. */
  record Done(String id, Words words, Mark mark, String outcome) implements Step {}

  /** The end, with the instrument given to a repairer. */
  record HandOver(String id, Words words, Mark mark, String outcome) implements Step {}
}
