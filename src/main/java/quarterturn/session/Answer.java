package quarterturn.session;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** What comes back from a prompt. */
public sealed interface Answer {
  /** Done, or accepted. */
  record Confirmed() implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.confirmed().apply(this);
    }
  }

  /** One line of words. */
  record Wrote(String text) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.wrote().apply(this);
    }
  }

  /** The option's id. */
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

  /** One number, in the quantity's unit. */
  record Value(double value) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.value().apply(this);
    }
  }

  /** The quantity can't be measured here. */
  record CannotMeasure() implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.cannotMeasure().apply(this);
    }
  }

  /**
   * The rod was turned.
   *
   * @param turn what was really turned, plus tightens; zero where the nut did not move
   */
  record Turned(Turn turn, Feel feel) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.turned().apply(this);
    }
  }

  /** At a turn: take the last turn back instead. */
  record Undo() implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.undo().apply(this);
    }
  }

  /**
   * The time has passed.
   *
   * @param reason why it may be ended early, or null
   */
  record Waited(@Nullable String reason) implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.waited().apply(this);
    }
  }

  /** The last answer was wrong: ask it again. */
  record Correct() implements Answer {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.correct().apply(this);
    }
  }

  /**
   * What to do with an answer of each kind. A kind without its case does not compile.
   *
   * @param <R> what comes of it
   */
  record Cases<R>(
      Function<Confirmed, R> confirmed,
      Function<Wrote, R> wrote,
      Function<Chose, R> chose,
      Function<Measured, R> measured,
      Function<Value, R> value,
      Function<CannotMeasure, R> cannotMeasure,
      Function<Turned, R> turned,
      Function<Undo, R> undo,
      Function<Waited, R> waited,
      Function<Correct, R> correct) {}

  /** What comes of the case of its kind. */
  <R> R match(Cases<R> cases);
}
