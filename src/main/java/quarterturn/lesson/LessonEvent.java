package quarterturn.lesson;

import java.time.Instant;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;

/**
 * Something that happened at a bench or a desk. Each writer numbers its own, from one; {@code
 * round} below is the number of the {@link Opened} of the same writer.
 *
 * <p>The times are the writer's own and are only shown: nothing is decided by them.
 */
public sealed interface LessonEvent {
  Instant at();

  /** An event that belongs to a round. */
  sealed interface InRound extends LessonEvent {
    int round();
  }

  /**
   * A bench has joined, for the first time or once more after a break.
   *
   * @param name as its students call it
   */
  record Joined(Instant at, String name) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.joined().apply(this);
    }
  }

  /**
   * A student sits down.
   *
   * @param level that the student begins with, or null for that of the plan
   */
  record Came(Instant at, String student, @Nullable Level level) implements LessonEvent {
    public Came(Instant at, String student) {
      this(at, student, null);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.came().apply(this);
    }
  }

  /** A student leaves the bench. */
  record Went(Instant at, String student) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.went().apply(this);
    }
  }

  /** The bench has come to a step. */
  record Stepped(Instant at, Spot spot) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.stepped().apply(this);
    }
  }

  /** The bench is still there: benches of earlier versions wrote it now and then. */
  record Ticked(Instant at) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ticked().apply(this);
    }
  }

  /**
   * Predictions are asked for: which way the rod will be turned, or what will be read. What a turn
   * will have done is predicted before it, and read some steps later.
   *
   * @param turn whether it is the way of a turn
   * @param blind whether every student reads for themselves
   * @param before the reading before, or null
   * @param step the gauge's step
   * @param question to answer afterwards, or null
   * @param unasked true where nobody is asked, and the reading is only noted; else null
   * @param string that is read, or null
   */
  record Opened(
      Instant at,
      Spot spot,
      boolean turn,
      boolean blind,
      @Nullable Value before,
      double step,
      @Nullable String question,
      @Nullable Boolean unasked,
      @Nullable String string)
      implements LessonEvent {
    /** One that everybody at the bench is asked about, and that names no string. */
    public Opened(
        Instant at,
        Spot spot,
        boolean turn,
        boolean blind,
        @Nullable Value before,
        double step,
        @Nullable String question) {
      this(at, spot, turn, blind, before, step, question, null, null);
    }

    /** This as if it had been asked at another step. */
    public Opened about(Spot other) {
      return new Opened(at, other, turn, blind, before, step, question, unasked, string);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.opened().apply(this);
    }
  }

  /** A student's prediction is locked. */
  record Predicted(Instant at, int round, String student, Prediction prediction)
      implements InRound {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.predicted().apply(this);
    }
  }

  /** All predictions are locked: the reading or turn may be shown now. */
  record Shown(Instant at, int round) implements InRound {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.shown().apply(this);
    }
  }

  /** A student's own reading; hidden until all are in. */
  record BlindRead(Instant at, int round, String student, Bracket bracket) implements InRound {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.blindRead().apply(this);
    }
  }

  /** All students have read for themselves: the spread of their readings is shown. */
  record Unveiled(Instant at, int round) implements InRound {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.unveiled().apply(this);
    }
  }

  /** A round's reading or turn; a second one corrects the first. */
  record Resulted(Instant at, int round, Value result) implements InRound {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.resulted().apply(this);
    }
  }

  /**
   * What a student made of a result.
   *
   * @param reason for how it differs from the prediction, or agrees with it; null where the student
   *     was not asked for one, and then the answer alone decides what was missed
   * @param question about a changed case, or null where there is none
   * @param answer to it, or null
   * @param missed whether it comes back next time
   */
  record Reflected(
      Instant at,
      int round,
      String student,
      @Nullable String reason,
      @Nullable String question,
      @Nullable String answer,
      boolean missed)
      implements InRound {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.reflected().apply(this);
    }
  }

  /**
   * A hold point was reached.
   *
   * @param waitsFor what is to be checked, in words
   * @param value what the teacher is to read back
   */
  record Held(Instant at, Spot spot, String waitsFor, Value value) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.held().apply(this);
    }
  }

  /** Somebody pressed stop. Who it was is not asked and not kept. */
  record Stopped(Instant at, @Nullable String reason) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.stopped().apply(this);
    }
  }

  /**
   * A question from an earlier lesson was asked again.
   *
   * @param missed whether it comes back next time
   */
  record AskedAgain(
      Instant at, String student, String question, String answer, boolean missed, boolean season)
      implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.askedAgain().apply(this);
    }
  }

  /** The bench took an order; from here on it holds. */
  record Accepted(Instant at, Ref ref, Order order) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.accepted().apply(this);
    }
  }

  /** The bench did not take an order. */
  record Declined(Instant at, Ref ref, Refusal why) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.declined().apply(this);
    }
  }

  /**
   * A desk's order.
   *
   * @param bench the writer it is for, or null for every bench
   */
  record Ordered(Instant at, @Nullable String bench, Order order) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.ordered().apply(this);
    }
  }

  /**
   * A student's name was struck from this writer's file, which was written anew with it.
   *
   * @param student the number that stands for the name
   */
  record Struck(Instant at, String student) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.struck().apply(this);
    }
  }

  /**
   * The bench was left in order; it is there again once it joins.
   *
   * @param finished whether all that was planned is done there
   */
  record Left(Instant at, boolean finished) implements LessonEvent {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.left().apply(this);
    }
  }

  /**
   * What to do with an event of each kind. A kind without its case does not compile.
   *
   * @param <R> what comes of it
   */
  record Cases<R>(
      Function<Joined, R> joined,
      Function<Came, R> came,
      Function<Went, R> went,
      Function<Stepped, R> stepped,
      Function<Ticked, R> ticked,
      Function<Opened, R> opened,
      Function<Predicted, R> predicted,
      Function<Shown, R> shown,
      Function<BlindRead, R> blindRead,
      Function<Unveiled, R> unveiled,
      Function<Resulted, R> resulted,
      Function<Reflected, R> reflected,
      Function<Held, R> held,
      Function<Stopped, R> stopped,
      Function<AskedAgain, R> askedAgain,
      Function<Accepted, R> accepted,
      Function<Declined, R> declined,
      Function<Ordered, R> ordered,
      Function<Struck, R> struck,
      Function<Left, R> left) {}

  /** What the case of this event's kind makes of it. */
  <R> R match(Cases<R> cases);
}
