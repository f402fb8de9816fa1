package quarterturn.procedure.condition;

import java.util.function.Function;
import quarterturn.procedure.kind.Quantity;

/** What a condition speaks about: a reading, a choice, a count. */
public sealed interface Subject {
  /** A subject that rests on readings of a quantity. */
  sealed interface OfQuantity extends Subject {
    Quantity quantity();
  }

  /** The last reading of a quantity: how it stands to the window, and its value. */
  record Reading(Quantity quantity) implements OfQuantity {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.reading().apply(this);
    }
  }

  /** The distance between the readings of the lowest and the highest string. */
  record Differing(Quantity quantity) implements OfQuantity {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.differing().apply(this);
    }
  }

  /** The distance between the last two readings on one string. */
  record Repeating(Quantity quantity) implements OfQuantity {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.repeating().apply(this);
    }
  }

  /** Whether what a neck has moved of late may creep on until its reading leaves the window. */
  record Creeping(Quantity quantity) implements OfQuantity {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.creeping().apply(this);
    }
  }

  /** The last readings of all strings together. */
  record Each(Quantity quantity) implements OfQuantity {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.each().apply(this);
    }
  }

  /** The answer chosen at a step, or the outcome of the procedure it calls. */
  record Choice(String step) implements Subject {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.choice().apply(this);
    }
  }

  /** The number of times a step was reached. */
  record Count(String step) implements Subject {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.count().apply(this);
    }
  }

  /** Who is at the bench. */
  record Person() implements Subject {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.person().apply(this);
    }
  }

  /** The distance that the rod was turned. */
  record Turning(Condition.Span span) implements Subject {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.turning().apply(this);
    }
  }

  /** The neck's response to the last turn. */
  record Neck() implements Subject {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.neck().apply(this);
    }
  }

  /** What all readings and turns together tell of the rod. */
  record Rod() implements Subject {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.rod().apply(this);
    }
  }

  /** The feel of the rod at the last turn. */
  record Feeling() implements Subject {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.feeling().apply(this);
    }
  }

  /** The larger jobs that this procedure runs within. */
  record Callers() implements Subject {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.callers().apply(this);
    }
  }

  /**
   * What to do with a subject of each kind. A kind without its case does not compile.
   *
   * @param <R> what comes of it
   */
  record Cases<R>(
      Function<Reading, R> reading,
      Function<Differing, R> differing,
      Function<Repeating, R> repeating,
      Function<Creeping, R> creeping,
      Function<Each, R> each,
      Function<Choice, R> choice,
      Function<Count, R> count,
      Function<Person, R> person,
      Function<Turning, R> turning,
      Function<Neck, R> neck,
      Function<Rod, R> rod,
      Function<Feeling, R> feeling,
      Function<Callers, R> callers) {}

  /** What the case of this subject's kind makes of it. */
  <R> R match(Cases<R> cases);

  /** This subject in words. */
  default String words() {
    return match(
        new Cases<>(
            reading -> reading.quantity().word(),
            differing -> "how " + differing.quantity().word() + " differs",
            repeating -> "how " + repeating.quantity().word() + " repeats",
            creeping -> "how " + creeping.quantity().word() + " may creep",
            each -> "every " + each.quantity().word(),
            choice -> "the answer to " + choice.step(),
            count -> "how often " + count.step() + " was reached",
            person -> "the role",
            turning -> "what was turned " + turning.span().words(),
            neck -> "what the neck did",
            rod -> "what the rod seems",
            feeling -> "how the rod felt",
            callers -> "the larger job"));
  }
}
