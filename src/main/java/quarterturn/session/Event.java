package quarterturn.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Results;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.NutKind;
import quarterturn.procedure.kind.PickupKind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * An event of a session. A session is the fold of its events; each is on disk before the next
 * prompt is shown, and none is ever changed.
 */
public sealed interface Event {
  public Instant at();

  /** Id of the change to the instrument that the event makes or reports, or null. */
  @Nullable String changes();

  /** Whether the event is an answer that a correction can withdraw. */
  boolean withdrawable();

  /** An event that can't be withdrawn. */
  sealed interface Kept extends Event {
    @Override
    default boolean withdrawable() {
      return false;
    }
  }

  /** An answer that a correction can withdraw. */
  sealed interface Given extends Event {
    @Override
    default boolean withdrawable() {
      return true;
    }
  }

  /** An event that changes nothing on the instrument. */
  sealed interface Still extends Event {
    @Override
    default @Nullable String changes() {
      return null;
    }
  }

  /** A report on a turn of the rod. */
  sealed interface OnRod extends Event {
    /** The amount of the turn; plus tightened. */
    Turn moved();

    /** Whether the person is sure of the amount. */
    boolean sure();

    /** How the rod nut felt; null where nobody said. */
    @Nullable Feel feel();

    @Override
    default @Nullable String changes() {
      return moved().turns() == 0 ? null : Results.ROD;
    }
  }

  /**
   * The start of the session.
   *
   * @param procedure the procedure's id
   * @param revision the procedure's revision
   * @param digest SHA-256 of the procedure's file
   * @param instrument the instrument's name, or null
   * @param kind id of the kind, or null when it is yet to be chosen
   * @param style null when it is yet to be chosen
   * @param jointFret this instrument's own joint fret, or null for the kind's
   * @param past turns and readings of this neck from earlier sessions, oldest first; the last of
   *     them, where {@code earlier} adds up those before
   * @param before what else was read on this instrument in earlier sessions: the last reading of
   *     each quantity and string
   * @param own facts of this instrument in place of its kind's, or null
   * @param carried what other records mean for it; null in sessions that began before that was kept
   * @param from the user's own file that the procedure stood in, or null for one of the program's
   * @param by who works, or null where that was not said
   * @param known what was answered of how it is made in earlier sessions
   * @param lesson id of the lesson that it is part of, or null
   * @param back when the lesson or session began whose turns this one sets back; null where it sets
   *     none back, or none is on record
   * @param earlier what else was on record of this neck then; null for an instrument without a
   *     name, and in records that list every turn
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
      @Nullable Own own,
      @Nullable Carried carried,
      @Nullable String from,
      @Nullable String by,
      List<Known> known,
      @Nullable String lesson,
      @Nullable Instant back,
      @Nullable Earlier earlier)
      implements Kept, Still {
    public Started {
      past = List.copyOf(past);
      before = List.copyOf(before);
      known = List.copyOf(known);
    }

    /** One that follows a procedure of the program, by whom is not said. */
    public Started(
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
        @Nullable Own own,
        @Nullable Carried carried) {
      this(
          at,
          procedure,
          revision,
          digest,
          role,
          instrument,
          kind,
          style,
          jointFret,
          past,
          before,
          own,
          carried,
          null,
          null,
          List.of(),
          null,
          null,
          null);
    }

    /** One that is part of no lesson, and sets none back. */
    public Started(
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
        @Nullable Own own,
        @Nullable Carried carried,
        @Nullable String from,
        @Nullable String by,
        List<Known> known) {
      this(
          at,
          procedure,
          revision,
          digest,
          role,
          instrument,
          kind,
          style,
          jointFret,
          past,
          before,
          own,
          carried,
          from,
          by,
          known,
          null,
          null,
          null);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.started().apply(this);
    }
  }

  /**
   * What was answered in an earlier session on the same instrument of how it is made.
   *
   * @param answer id of the option that was chosen
   */
  record Known(Instant at, Recorded what, String answer) {}

  /**
   * Facts of an instrument in place of its kind's.
   *
   * @param scaleMm its scale length in millimetres, or null
   * @param tuning the notes of its strings, the lowest first; empty for the kind's
   * @param gaugesMm the diameters of its strings in millimetres; empty where not known
   * @param radiusMm the radius of its board in millimetres, or null
   * @param fixedSaddles whether its saddles can't be moved
   * @param windows its own windows, by what they are for
   * @param nut what guides its strings, or null
   * @param bridge what can be moved at its bridge, or null
   * @param pickup the pickup whose gap is read, or null
   * @param rod the kind of its truss rod, or null
   */
  record Own(
      @Nullable Double scaleMm,
      List<String> tuning,
      List<Double> gaugesMm,
      @Nullable Double radiusMm,
      boolean fixedSaddles,
      Map<Aim, Window> windows,
      @Nullable NutKind nut,
      @Nullable BridgeKind bridge,
      @Nullable PickupKind pickup,
      @Nullable RodKind rod) {
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
   * @param readAt fret it was read at, 0 for none; -1 where the kind's convention was used
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

    /** A reading by the kind's convention. */
    public Before(
        Instant at,
        Quantity quantity,
        @Nullable String string,
        @Nullable Bracket bracket,
        @Nullable Double value,
        List<String> since) {
      this(at, quantity, string, bracket, value, since, List.of(), -1);
    }

    /** This reading with one more change made to the instrument after it. */
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
   * What was on record of a neck when a session began, beyond the turns that its start lists.
   *
   * @param sessions how many records of sessions of this neck there were, copies included
   * @param sum over what each of them held, by which they are known again
   * @param summed the turns before those that are listed; null where there were none
   */
  record Earlier(int sessions, String sum, @Nullable Summed summed) {}

  /**
   * Turns added up.
   *
   * @param turn all of them; plus tightened
   * @param turns how many they are
   * @param until when the last of them was made
   */
  record Summed(Turn turn, int turns, Instant until) {}

  /**
   * A turn from an earlier session on the same neck.
   *
   * @param turn plus tightened
   * @param before relief on the lowest string before the turn, or null
   * @param after relief on the lowest string after it, or null
   * @param freed how far the nut was first turned back and to its mark again, or null
   * @param latest when it was on record already, where {@code at} is later, by a wrong clock; or
   *     null
   */
  record Past(
      Instant at,
      Turn turn,
      @Nullable Bracket before,
      @Nullable Bracket after,
      @Nullable Turn freed,
      @Nullable Instant latest) {
    /** A turn by a clock that was right. */
    public Past(
        Instant at,
        Turn turn,
        @Nullable Bracket before,
        @Nullable Bracket after,
        @Nullable Turn freed) {
      this(at, turn, before, after, freed, null);
    }

    /** A turn of a nut that was not freed first. */
    public Past(Instant at, Turn turn, @Nullable Bracket before, @Nullable Bracket after) {
      this(at, turn, before, after, null);
    }

    /** The latest time at which it can have been made; {@code at} is only what a clock showed. */
    public Instant when() {
      return latest != null && latest.isBefore(at) ? latest : at;
    }

    /** This turn, which was made at {@code known} or before. */
    public Past by(Instant known) {
      return known.isBefore(when()) ? new Past(at, turn, before, after, freed, known) : this;
    }

    /** All that the nut was moved, either way, in turns. */
    public double moved() {
      return moved(turn, freed);
    }

    /** All that a nut is moved by a turn, either way, in turns. */
    public static double moved(Turn turn, @Nullable Turn freed) {
      return turn.size().turns() + (freed == null || turn.turns() == 0 ? 0 : 2 * freed.turns());
    }
  }

  /**
   * Hazards were shown and accepted before a step.
   *
   * @param hazard id of the first
   * @param also ids of those that were accepted with it
   */
  record Accepted(Instant at, String step, String hazard, List<String> also)
      implements Kept, Still {
    public Accepted {
      also = List.copyOf(also);
    }

    /** Those of one page, at least one. */
    public static Accepted of(Instant at, String step, List<Hazard> page) {
      List<String> ids = page.stream().map(Hazard::id).toList();
      return new Accepted(at, step, ids.get(0), ids.subList(1, ids.size()));
    }

    /** The ids of all that were accepted. */
    public List<String> hazards() {
      return Stream.concat(Stream.of(hazard), also.stream()).toList();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.accepted().apply(this);
    }
  }

  /**
   * A step was confirmed as done.
   *
   * @param changes id of the change to the instrument that it made, or null
   */
  record Told(Instant at, String step, @Nullable String changes) implements Given {
    /** A step that changed nothing. */
    public Told(Instant at, String step) {
      this(at, step, null);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.told().apply(this);
    }
  }

  /** A line of words was written down. */
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
   * @param amount the amount asked for, in millimetres; plus is up, or away from the nut
   */
  record Adjusted(Instant at, String step, String change, String string, double amount)
      implements Given {
    @Override
    public String changes() {
      return change;
    }

    /** This event at another time. */
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
   * @param changes id of the change to the instrument that it reports, or null
   */
  record Chose(Instant at, String step, String option, @Nullable String changes) implements Given {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.chose().apply(this);
    }
  }

  /**
   * A reading and its convention.
   *
   * @param quantity the quantity read
   * @param which lowest or highest string, or null
   * @param string the string's note, or null
   * @param held frets held
   * @param readAt fret read at, 0 where none
   * @param step the gauge's step in the quantity's unit
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

    /** Whether the quantity could not be measured. */
    public boolean missing() {
      return bracket == null && value == null;
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.read().apply(this);
    }
  }

  /**
   * A turn is asked for. The event is written before the turn is shown, so that a break inside a
   * turn is known.
   *
   * @param turn the amount, plus tightens
   * @param freed how far the nut is first turned back and to its mark again, or null
   * @param expected the relief that was expected after it, nine times in ten; no low bound where
   *     the string may touch; null where none could be expected, and in older records
   */
  record Offered(
      Instant at, String step, Turn turn, @Nullable Turn freed, @Nullable Bracket expected)
      implements Kept, Still {
    /** A turn of a nut that is not freed first. */
    public Offered(Instant at, String step, Turn turn) {
      this(at, step, turn, null, null);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.offered().apply(this);
    }
  }

  /** The person asks, at a turn, to take the last turn back instead. */
  record UndoAsked(Instant at, String step) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.undoAsked().apply(this);
    }
  }

  /** The rod was turned; a plus tightened it. */
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
   * The person's report, after a break, of the turn that was asked for before it.
   *
   * @param turned the amount turned, plus tightened; zero where the rod was not turned
   * @param sure false where the person could not tell; the turn is counted, but nothing is learned
   *     from it
   * @param feel how it felt, or null where the rod was not tried or the person could not tell
   */
  record Recalled(Instant at, String step, Turn turned, boolean sure, @Nullable Feel feel)
      implements Given, OnRod {
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
   * @param why the condition that allowed it, in words
   */
  record Passed(Instant at, String step, String why) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.passed().apply(this);
    }
  }

  /**
   * At a pause a value was said once more, and it agrees with the record.
   *
   * @param line the name of the value that was asked for
   * @param value the value on record
   */
  record ReadBack(Instant at, String step, String line, String value) implements Given, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.readBack().apply(this);
    }
  }

  /**
   * A reading was given that can hardly be true. It does not count, and a technician goes on step
   * by step from then on.
   *
   * @param why what is wrong with it, in a sentence
   */
  record Doubted(Instant at, String step, String why) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.doubted().apply(this);
    }
  }

  /** The last answer was withdrawn and is asked again; the next answer is the correction. */
  record Corrected(Instant at, String step) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.corrected().apply(this);
    }
  }

  /** The person left; {@code standing} is the state that the instrument was left in. */
  record Left(Instant at, String standing) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.left().apply(this);
    }
  }

  /**
   * The session was taken up again.
   *
   * @param elsewhere turns made on the same neck in other sessions, which were not known when this
   *     one began, oldest first
   * @param carried what other records mean for it now; null where that was not kept yet
   * @param by who works from here on, or null where that was not said
   */
  record Resumed(Instant at, List<Past> elsewhere, @Nullable Carried carried, @Nullable String by)
      implements Kept, Still {
    public Resumed {
      elsewhere = List.copyOf(elsewhere);
    }

    /** One by whom is not said. */
    public Resumed(Instant at, List<Past> elsewhere, @Nullable Carried carried) {
      this(at, elsewhere, carried, null);
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
   * @param outcome the outcome's word
   * @param why the reason in one sentence
   */
  record Ended(Instant at, String step, boolean handOver, String outcome, String why)
      implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ended().apply(this);
    }
  }

  /**
   * The person will not go on with the session. It is kept and not offered any more; what was
   * turned in it still counts.
   *
   * @param standing the state that the instrument is left in
   */
  record Discarded(Instant at, String standing) implements Kept, Still {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.discarded().apply(this);
    }
  }

  /**
   * A function for each kind of event. A kind without a function does not compile.
   *
   * @param <R> the result of the functions
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
      Function<Ended, R> ended,
      Function<Discarded, R> discarded) {}

  /** The result of the function for this event's kind. */
  <R> R match(Cases<R> cases);
}
