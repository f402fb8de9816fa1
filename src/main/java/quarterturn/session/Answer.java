package quarterturn.session;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.condition.Feel;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** An answer to a prompt. */
public sealed interface Answer {
  /** A confirmation that something was done, or that a hazard was accepted. */
  record Confirmed() implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.confirmed().apply(this);
    }
  }

  /** A line of words. */
  record Wrote(String text) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.wrote().apply(this);
    }
  }

  /** The choice of an option by its id. */
  record Chose(String option) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.chose().apply(this);
    }
  }

  /** A gauge reading. */
  record Measured(Bracket bracket) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.measured().apply(this);
    }
  }

  /** A reading that is one number, in the quantity's unit. */
  record Value(double value) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.value().apply(this);
    }
  }

  /** A statement that the quantity can't be measured. */
  record CannotMeasure() implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.cannotMeasure().apply(this);
    }
  }

  /**
   * A report of a rod turn.
   *
   * @param turn what was really turned, plus tightens; zero where the nut did not move
   */
  record Turned(Turn turn, Feel feel) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.turned().apply(this);
    }
  }

  /**
   * A report of a rod turn that gave a sign to stop, where nobody can say how far it went. It is
   * taken to have gone as far as was asked.
   *
   * @param why what is wrong with the amount, for a feel that is no sign to stop
   */
  record Felt(Feel feel, String why) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.felt().apply(this);
    }
  }

  /** A wish, at a rod turn, to take the last turn back instead. */
  record Undo() implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.undo().apply(this);
    }
  }

  /**
   * The end of a wait.
   *
   * @param reason why the wait is ended early, or null
   */
  record Waited(@Nullable String reason) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.waited().apply(this);
    }
  }

  /** A statement that the last answer was wrong, so that it is asked again. */
  record Correct() implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.correct().apply(this);
    }
  }

  /**
   * A statement, at any prompt, that the instrument is not made as recorded.
   *
   * @param answer what holds instead, as an answer to the question it is recorded of
   */
  record Differs(Recorded what, String answer) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.differs().apply(this);
    }
  }

  /**
   * A function for each kind of answer. A kind without a function does not compile.
   *
   * @param <R> the result of the functions
   */
  record Cases<R>(
      Function<Confirmed, R> confirmed,
      Function<Wrote, R> wrote,
      Function<Chose, R> chose,
      Function<Measured, R> measured,
      Function<Value, R> value,
      Function<CannotMeasure, R> cannotMeasure,
      Function<Turned, R> turned,
      Function<Felt, R> felt,
      Function<Undo, R> undo,
      Function<Waited, R> waited,
      Function<Correct, R> correct,
      Function<Differs, R> differs) {}

  /** The result of the function for this answer's kind. */
  <R> R match(Cases<R> cases);
}
