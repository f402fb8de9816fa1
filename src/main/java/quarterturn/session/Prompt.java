package quarterturn.session;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.InWindow;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.unit.Turn;

/**
 * A prompt: what the engine asks for next. A face answers it: a screen, a typed line, a script, a
 * simulated person.
 */
public sealed interface Prompt {
  PromptText said();

  /**
   * An instruction to carry out and confirm. Answered by {@link Answer.Confirmed}.
   *
   * @param informs whether it only tells something, so that there is nothing to carry out
   */
  record Tell(PromptText said, boolean informs) implements Prompt {
    /** An instruction that is carried out. */
    public Tell(PromptText said) {
      this(said, false);
    }

    /** What an answer is for, in a short line. */
    public String enter() {
      return informs ? "Press Enter to go on." : "Press Enter when it is done.";
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.tell().apply(this);
    }
  }

  /**
   * The hazards of one step, to accept together with a key of its own. Answered by {@link
   * Answer.Confirmed}.
   *
   * @param hazards those not accepted yet, the worst first; at least one
   */
  record Caution(PromptText said, List<Hazard> hazards) implements Prompt {
    public Caution {
      hazards = List.copyOf(hazards);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.caution().apply(this);
    }
  }

  /** A choice of one option, the ordinary one first. Answered by {@link Answer.Chose}. */
  record Choose(PromptText said, List<Option> options) implements Prompt {
    public Choose {
      options = List.copyOf(options);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.choose().apply(this);
    }
  }

  /** A line of words to write down. Answered by {@link Answer.Wrote}. */
  record Write(PromptText said) implements Prompt {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.write().apply(this);
    }
  }

  /** One answer of a {@link Choose}. */
  record Option(String id, String label) {}

  /**
   * A quantity to read. Answered by {@link Answer.Measured}, {@link Answer.Value} (for a quantity
   * that is one number) or {@link Answer.CannotMeasure}.
   *
   * @param held frets to hold down; empty for none
   * @param readAt fret over which the gap is read; 0 for none
   * @param which lowest or highest string; null for none
   * @param string the note of that string, or null
   * @param step the gauge's step in the quantity's unit
   */
  record Measure(
      PromptText said,
      Quantity quantity,
      List<Integer> held,
      int readAt,
      @Nullable Which which,
      @Nullable String string,
      double step)
      implements Prompt {
    public Measure {
      held = List.copyOf(held);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.measure().apply(this);
    }
  }

  /**
   * A rod turn to make now. Answered by {@link Answer.Turned} or {@link Answer.Undo}.
   *
   * @param turn the amount; plus tightens
   * @param limit the largest amount between two readings
   * @param expected the relief to expect afterwards, or null where nothing can be expected
   * @param canUndo whether the last turn may be taken back instead
   * @param stops the feels that end the work on the rod
   * @param back whether the key's handle stands where the last turn left it, and is turned back
   *     from there to where it began
   */
  record TurnRod(
      PromptText said,
      Turn turn,
      Turn limit,
      @Nullable Expected expected,
      boolean canUndo,
      Set<Feel> stops,
      boolean back)
      implements Prompt {
    /** A turn that begins where the key's handle was seated. */
    public TurnRod(
        PromptText said,
        Turn turn,
        Turn limit,
        @Nullable Expected expected,
        boolean canUndo,
        Set<Feel> stops) {
      this(said, turn, limit, expected, canUndo, stops, false);
    }

    public TurnRod {
      // In the order of the feels, so that two prompts with the same print alike.
      stops = Collections.unmodifiableSet(new TreeSet<>(stops));
    }

    /** The direction of the turn: "tighten" or "loosen". */
    public String direction() {
      return turn.turns() > 0 ? "tighten" : "loosen";
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.turnRod().apply(this);
    }
  }

  /**
   * A range of relief in millimetres that a turn is expected to lead to.
   *
   * @param lowMm minus infinity where the string may still touch
   */
  record Expected(double lowMm, double highMm) {}

  /**
   * A wait. Answered by {@link Answer.Waited}.
   *
   * @param from when the wait began
   * @param until when the wait ends
   * @param rest whether this is the daily rest, during which the program may be closed
   * @param mayLift whether this person may end the wait early, with a reason
   * @param meanwhile what may be done until then
   */
  record Wait(
      PromptText said, Instant from, Instant until, boolean rest, boolean mayLift, String meanwhile)
      implements Prompt {
    public Duration length() {
      return Duration.between(from, until);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.await().apply(this);
    }
  }

  /** The end of a session. Takes no answer. */
  sealed interface Ending extends Prompt {
    String outcome();

    /** The outcome in plain words. */
    default String words() {
      return InWindow.shown(outcome());
    }
  }

  /** The end of a session that is done or was left in good order. */
  record Done(PromptText said, String outcome) implements Ending {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.done().apply(this);
    }
  }

  /** The end of a session whose instrument goes to a repairer. */
  record HandOver(PromptText said, String outcome) implements Ending {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.handOver().apply(this);
    }
  }

  /** This prompt with more notes after its own. */
  default Prompt noting(List<String> notes) {
    return saying(said().noting(notes));
  }

  /**
   * This prompt with another instruction to be carried out first; one answer confirms both.
   *
   * @param stands whether the instruction's effect is already on record
   */
  default Prompt after(PromptText first, boolean stands) {
    return saying(said().after(first, stands));
  }

  /** This prompt with another text and the same request. */
  default Prompt saying(PromptText more) {
    return match(
        new Cases<>(
            tell -> new Tell(more, tell.informs()),
            caution -> new Caution(more, caution.hazards()),
            choose -> new Choose(more, choose.options()),
            write -> new Write(more),
            p ->
                new Measure(
                    more, p.quantity(), p.held(), p.readAt(), p.which(), p.string(), p.step()),
            p -> new TurnRod(more, p.turn(), p.limit(), p.expected(), p.canUndo(), p.stops()),
            p -> new Wait(more, p.from(), p.until(), p.rest(), p.mayLift(), p.meanwhile()),
            done -> new Done(more, done.outcome()),
            handOver -> new HandOver(more, handOver.outcome())));
  }

  /** Whether the session has ended. */
  default boolean ended() {
    return this instanceof Ending;
  }

  /**
   * A function for each kind of prompt. A kind without a function does not compile.
   *
   * @param <R> the result of the functions
   */
  record Cases<R>(
      Function<Tell, R> tell,
      Function<Caution, R> caution,
      Function<Choose, R> choose,
      Function<Write, R> write,
      Function<Measure, R> measure,
      Function<TurnRod, R> turnRod,
      Function<Wait, R> await,
      Function<Done, R> done,
      Function<HandOver, R> handOver) {}

  /** The result of the function for this prompt's kind. */
  <R> R match(Cases<R> cases);
}
