package quarterturn.session;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.unit.Turn;

/**
 * What the engine wants next. Whatever answers prompts is a face: a screen, a typed line, a script,
 * a simulated neck.
 */
public sealed interface Prompt {
  PromptText said();

  /** Do this, then confirm. Answered by {@link Answer.Confirmed}. */
  record Tell(PromptText said) implements Prompt {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.tell().apply(this);
    }
  }

  /** A hazard, accepted with its own key. Answered by {@link Answer.Confirmed}. */
  record Caution(PromptText said, Hazard hazard) implements Prompt {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.caution().apply(this);
    }
  }

  /** Answered by {@link Answer.Chose}; the ordinary answer stands first. */
  record Choose(PromptText said, List<Option> options) implements Prompt {
    public Choose {
      options = List.copyOf(options);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.choose().apply(this);
    }
  }

  /** Something to be written down. Answered by {@link Answer.Wrote}. */
  record Write(PromptText said) implements Prompt {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.write().apply(this);
    }
  }

  /** One answer of a {@link Choose}. */
  record Option(String id, String label) {}

  /**
   * Answered by {@link Answer.Measured}, {@link Answer.Value} (for a quantity that is one number)
   * or {@link Answer.CannotMeasure}.
   *
   * @param held frets held down, empty where none is
   * @param readAt fret over which the gap is read, 0 where none is
   * @param which lowest or highest string, null where none is
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
   * Turn the rod, now. Answered by {@link Answer.Turned} or {@link Answer.Undo}.
   *
   * @param turn how far; plus tightens
   * @param limit the most between two readings
   * @param expected what the reading should show afterwards, or null where nothing can be expected
   * @param canUndo whether the last turn may be taken back instead
   */
  record TurnRod(
      PromptText said, Turn turn, Turn limit, @Nullable Expected expected, boolean canUndo)
      implements Prompt {
    /** "tighten" or "loosen". */
    public String direction() {
      return turn.turns() > 0 ? "tighten" : "loosen";
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.turnRod().apply(this);
    }
  }

  /**
   * A range of relief in millimetres that a turn should lead to.
   *
   * @param lowMm minus infinity where the string may still touch
   */
  record Expected(double lowMm, double highMm) {}

  /**
   * Wait. Answered by {@link Answer.Waited}.
   *
   * @param from when the waiting began
   * @param until when it is over
   * @param rest whether this is the daily rest, for which the program may be closed
   * @param mayLift whether this role may end it early, with a reason
   */
  record Wait(PromptText said, Instant from, Instant until, boolean rest, boolean mayLift)
      implements Prompt {
    public Duration length() {
      return Duration.between(from, until);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.await().apply(this);
    }
  }

  /** The session has ended. Nothing to answer. */
  sealed interface Ending extends Prompt {
    String outcome();

    /** The outcome in plain words. */
    default String words() {
      return outcome().replace('-', ' ');
    }
  }

  /** The end: done, or left in good order. */
  record Done(PromptText said, String outcome) implements Ending {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.done().apply(this);
    }
  }

  /** The end: for a repairer. */
  record HandOver(PromptText said, String outcome) implements Ending {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.handOver().apply(this);
    }
  }

  /** This prompt with more notes behind those it has. */
  default Prompt noting(List<String> notes) {
    return saying(said().noting(notes));
  }

  /**
   * This prompt, to be answered once what another asks for is done too.
   *
   * @param stands whether what that brings about is so already, by the record
   */
  default Prompt after(PromptText first, boolean stands) {
    return saying(said().after(first, stands));
  }

  /** This prompt with another text, and all that it asks for as it is. */
  default Prompt saying(PromptText more) {
    return match(
        new Cases<>(
            tell -> new Tell(more),
            caution -> new Caution(more, caution.hazard()),
            choose -> new Choose(more, choose.options()),
            write -> new Write(more),
            p ->
                new Measure(
                    more, p.quantity(), p.held(), p.readAt(), p.which(), p.string(), p.step()),
            p -> new TurnRod(more, p.turn(), p.limit(), p.expected(), p.canUndo()),
            p -> new Wait(more, p.from(), p.until(), p.rest(), p.mayLift()),
            done -> new Done(more, done.outcome()),
            handOver -> new HandOver(more, handOver.outcome())));
  }

  /** Whether the session has ended. */
  default boolean ended() {
    return this instanceof Ending;
  }

  /**
   * What to do with a prompt of each kind. A kind without its case does not compile.
   *
   * @param <R> what comes of it
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

  /** What comes of the case of its kind. */
  <R> R match(Cases<R> cases);
}
