package quarterturn.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Results;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * Something that happened. A session is the fold of its events; each is on disk before the next
 * prompt is shown, and none is ever changed.
 */
public sealed interface Event {
  public Instant at();

  /** Id of the change to the instrument that it is or tells of, or null. */
  @Nullable String changes();

  /** Whether it is an answer that a correction takes back. */
  boolean withdrawable();

  /** What nobody takes back. */
  sealed interface Kept extends Event {
    @Override
    default boolean withdrawable() {
      return false;
    }
  }

  /** An answer that a correction takes back. */
  sealed interface Given extends Event {
    @Override
    default boolean withdrawable() {
      return true;
    }
  }

  /** What changes nothing on the instrument. */
  sealed interface Still extends Event {
    @Override
    default @Nullable String changes() {
      return null;
    }
  }

  /** What is on record of the rod being turned. */
  sealed interface OnRod extends Event {
    /** How far; plus tightened. */
    Turn moved();

    /** Whether the person knows that it was so. */
    boolean sure();

    @Override
    default @Nullable String changes() {
      return moved().turns() == 0 ? null : Results.ROD;
    }
  }

  /**
   * The session began.
   *
   * @param procedure its id
   * @param revision its revision
   * @param digest SHA-256 of its file
   * @param instrument the instrument's name, or null
   * @param kind id of the kind, or null when it is yet to be chosen
   * @param style null when it is yet to be chosen
   * @param jointFret this instrument's own joint fret, or null for the kind's
   * @param past turns and readings of this neck from earlier sessions, oldest first
   * @param before what else was read on this instrument in earlier sessions: the last reading of
   *     each quantity and string
   * @param own what this instrument has of its own in place of its kind's, or null
   */
  record Started(
      Instant at,
      String procedure,
      int revision,
      String digest,
      Role role,
      @Nullable String instrument,
      @Nullable String kind,
      @Nullable Style style,
      @Nullable Integer jointFret,
      List<Past> past,
      List<Before> before,
      @Nullable Own own)
      implements Kept, Still {
    public Started {
      past = List.copyOf(past);
      before = List.copyOf(before);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.started().apply(this);
    }
  }

  /**
   * What an instrument has of its own.
   *
   * @param scaleMm its scale length, or null
   * @param tuning the notes of its strings, the lowest first; empty for the kind's
   * @param gaugesMm their diameters; empty where not known
   * @param radiusMm of its board, or null
   * @param fixedSaddles whether its saddles can't be moved
   * @param windows its own windows
   */
  record Own(
      @Nullable Double scaleMm,
      List<String> tuning,
      List<Double> gaugesMm,
      @Nullable Double radiusMm,
      boolean fixedSaddles,
      Map<Aim, Window> windows) {
    public Own {
      tuning = List.copyOf(tuning);
      gaugesMm = List.copyOf(gaugesMm);
      windows = Map.copyOf(windows);
    }
  }

  /**
   * A reading from an earlier session on the same instrument.
   *
   * @param string the note of the string, or null
   * @param bracket the reading, or null where it is one number
   * @param value the number, or null
   * @param since ids of the changes made to the instrument after it
   * @param held frets that were held
   * @param readAt fret it was read at, 0 where none; -1 where it was read as the kind has it
   */
  record Before(
      Instant at,
      Quantity quantity,
      @Nullable String string,
      @Nullable Bracket bracket,
      @Nullable Double value,
      List<String> since,
      List<Integer> held,
      int readAt) {
    public Before {
      since = List.copyOf(since);
      held = List.copyOf(held);
    }

    /** One that was read as the kind has it. */
    public Before(
        Instant at,
        Quantity quantity,
        @Nullable String string,
        @Nullable Bracket bracket,
        @Nullable Double value,
        List<String> since) {
      this(at, quantity, string, bracket, value, since, List.of(), -1);
    }

    /** This reading, with one more change made to the instrument after it. */
    Before changed(String change) {
      if (since.contains(change)) {
        return this;
      }
      List<String> more = new ArrayList<>(since);
      more.add(change);
      return new Before(at, quantity, string, bracket, value, more, held, readAt);
    }
  }

  /**
   * A turn from an earlier session on the same neck.
   *
   * @param turn plus tightened
   * @param before the reading before it, or null
   * @param after the reading after it, or null
   */
  record Past(Instant at, Turn turn, @Nullable Bracket before, @Nullable Bracket after) {}

  /** A hazard was shown and accepted before a step. */
  record Accepted(Instant at, String step, String hazard) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.accepted().apply(this);
    }
  }

  /**
   * A step was confirmed as done.
   *
   * @param changes the change to the instrument that it made, or null
   */
  record Told(Instant at, String step, @Nullable String changes) implements Given {
    /** Where nothing was changed. */
    public Told(Instant at, String step) {
      this(at, step, null);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.told().apply(this);
    }
  }

  /** Something was written down. */
  record Noted(Instant at, String step, String text) implements Given, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.noted().apply(this);
    }
  }

  /**
   * A saddle or a pickup was set on one string.
   *
   * @param change id of the change
   * @param string the string's note
   * @param amount what was asked for, in millimetres; plus is up, or away from the nut
   */
  record Adjusted(Instant at, String step, String change, String string, double amount)
      implements Given {
    @Override
    public String changes() {
      return change;
    }

    /** This setting, as made at another time. */
    public Adjusted at(Instant then) {
      return new Adjusted(then, step, change, string, amount);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.adjusted().apply(this);
    }
  }

  /**
   * An option was chosen.
   *
   * @param changes the change to the instrument that it tells of, or null
   */
  record Chose(Instant at, String step, String option, @Nullable String changes) implements Given {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.chose().apply(this);
    }
  }

  /**
   * A reading with its convention.
   *
   * @param quantity what was read
   * @param which the string, or null
   * @param string the string's note, or null
   * @param held frets held
   * @param readAt fret read at, 0 where none
   * @param step the gauge's step
   * @param bracket the reading, or null where it is one number or could not be taken
   * @param value the number, or null
   */
  record Read(
      Instant at,
      String step,
      Quantity quantity,
      @Nullable Which which,
      @Nullable String string,
      List<Integer> held,
      int readAt,
      double gaugeStep,
      @Nullable Bracket bracket,
      @Nullable Double value)
      implements Given, Still {
    public Read {
      held = List.copyOf(held);
    }

    /** Whether it could not be measured. */
    public boolean missing() {
      return bracket == null && value == null;
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.read().apply(this);
    }
  }

  /**
   * A turn is about to be shown. Written before it is, so that a break inside a turn is known.
   *
   * @param turn how far, plus tightens
   */
  record Offered(Instant at, String step, Turn turn) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.offered().apply(this);
    }
  }

  /** At a turn, the last turn is to be taken back instead. */
  record UndoAsked(Instant at, String step) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.undoAsked().apply(this);
    }
  }

  /** The rod was turned; plus tightened. */
  record Turned(Instant at, String step, Turn turn, Feel feel) implements Given, OnRod {
    @Override
    public Turn moved() {
      return turn;
    }

    @Override
    public boolean sure() {
      return true;
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.turned().apply(this);
    }
  }

  /**
   * After a break inside a turn, what the person said about it.
   *
   * @param turned what was turned, plus tightened; zero where it was not
   * @param sure false where the person could not tell; it is counted, and nothing is learned from
   *     it
   * @param feel how it felt, or null where the rod was not tried or the person could not tell
   */
  record Recalled(Instant at, String step, Turn turned, boolean sure, @Nullable Feel feel)
      implements Kept, OnRod {
    @Override
    public Turn moved() {
      return turned;
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.recalled().apply(this);
    }
  }

  /** A wait began. */
  record WaitBegan(Instant at, String step, Instant until) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.waitBegan().apply(this);
    }
  }

  /**
   * A wait is over.
   *
   * @param reason why it was ended early, or null where the time had passed
   */
  record Waited(Instant at, String step, @Nullable String reason) implements Given, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.waited().apply(this);
    }
  }

  /**
   * A step was passed over on a technician's short path.
   *
   * @param why the condition that allowed it
   */
  record Passed(Instant at, String step, String why) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.passed().apply(this);
    }
  }

  /**
   * At a pause a value was said once more, and it is the one on record.
   *
   * @param line what was asked
   * @param value as it stands on record
   */
  record ReadBack(Instant at, String step, String line, String value) implements Given, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.readBack().apply(this);
    }
  }

  /**
   * A technician gave a reading that can hardly be true; it does not count, and the stage goes step
   * by step from here.
   *
   * @param why what is wrong with it, in a sentence
   */
  record Doubted(Instant at, String step, String why) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.doubted().apply(this);
    }
  }

  /** The last answer is withdrawn and asked again; the answer that follows is the correction. */
  record Corrected(Instant at, String step) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.corrected().apply(this);
    }
  }

  /** The person left; {@code standing} is the state the instrument was left in. */
  record Left(Instant at, String standing) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.left().apply(this);
    }
  }

  /**
   * The session was taken up again.
   *
   * @param elsewhere turns made on the same neck in other sessions since this one began, oldest
   *     first
   */
  record Resumed(Instant at, List<Past> elsewhere) implements Kept, Still {
    public Resumed {
      elsewhere = List.copyOf(elsewhere);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.resumed().apply(this);
    }
  }

  /**
   * The session ended.
   *
   * @param handOver whether the instrument goes to a repairer
   * @param outcome a word for it
   * @param why one sentence
   */
  record Ended(Instant at, String step, boolean handOver, String outcome, String why)
      implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ended().apply(this);
    }
  }

  /**
   * What to do with an event of each kind. A kind without its case does not compile.
   *
   * @param <R> what comes of it
   */
  record Cases<R>(
      Function<Started, R> started,
      Function<Accepted, R> accepted,
      Function<Told, R> told,
      Function<Noted, R> noted,
      Function<Adjusted, R> adjusted,
      Function<Chose, R> chose,
      Function<Read, R> read,
      Function<Offered, R> offered,
      Function<UndoAsked, R> undoAsked,
      Function<Turned, R> turned,
      Function<Recalled, R> recalled,
      Function<WaitBegan, R> waitBegan,
      Function<Waited, R> waited,
      Function<Passed, R> passed,
      Function<ReadBack, R> readBack,
      Function<Doubted, R> doubted,
      Function<Corrected, R> corrected,
      Function<Left, R> left,
      Function<Resumed, R> resumed,
      Function<Ended, R> ended) {}

  /** What comes of the case of its kind. */
  <R> R match(Cases<R> cases);
}
