package quarterturn.lesson.student;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Keep;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Round;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Spread;
import quarterturn.lesson.Value;
import quarterturn.procedure.LessonQuestion;
import quarterturn.session.Prompt;

/**
 * Says what comes before a bench's prompt. Pure: the same events, prompt and plan always give the
 * same gate.
 *
 * @param at when it is asked
 */
public record Gatekeeper(BenchLesson lesson, Moment moment, Plan plan, Instant at) {
  /** The gate that the bench stands at now. */
  public Gate gate() {
    if (lesson.over()) {
      return new Gate.Over();
    }
    for (Keep keep : lesson.keptBy()) {
      if (keep.kind() == Keep.Kind.STOP) {
        return new Gate.Stopped(keep);
      }
      if (keep.kind() == Keep.Kind.TEACHER) {
        return new Gate.Held(keep);
      }
    }
    Gate first = lastRound();
    if (first == null) {
      first = round();
    }
    if (first == null) {
      first = holdPoint();
    }
    return first == null ? reading() : first;
  }

  /**
   * What is still to be done about the last round, or the note that the bench has moved on; null
   * where neither.
   */
  private @Nullable Gate lastRound() {
    Round last = lesson.lastRound();
    boolean left = last != null && !last.opened().spot().equals(moment.spot()) && !moment.again();
    if (last != null && left && last.shown() != null && last.result() == null) {
      // The session took the answer, and then the machine stopped.
      Value answered = moment.answered() == null ? Value.NONE : moment.answered();
      return new Gate.Record(new LessonEvent.Resulted(at, last.n(), answered));
    }
    if (!moment.spot().equals(lesson.spot())) {
      return new Gate.Record(new LessonEvent.Stepped(at, moment.spot()));
    }
    if (last != null && left && !last.toReflect(lesson.students()).isEmpty()) {
      return reflect(last, last.toReflect(lesson.students()).get(0));
    }
    return null;
  }

  private static Gate reflect(Round round, String student) {
    Prediction prediction = round.predictions().get(student);
    Value result = round.result();
    if (prediction == null || result == null) {
      throw new IllegalStateException("nobody reflects on what was not predicted or read");
    }
    return new Gate.Reflect(round.n(), student, prediction, result, round.opened().question());
  }

  private @Nullable Gate round() {
    double step =
        moment.prompt() instanceof Prompt.Measure measure
            ? measure.step()
            : moment.prompt() instanceof Prompt.TurnRod ? 1 / 16.0 : 0;
    if (step == 0 || moment.again()) {
      return null;
    }
    Round round = lesson.roundAt(moment.spot());
    if (round == null) {
      return new Gate.Record(opened(step));
    }
    if (round.shown() != null) {
      return null;
    }
    if (lesson.students().isEmpty()) {
      return new Gate.Nobody();
    }
    List<String> missing = round.toPredict(lesson.students());
    return missing.isEmpty()
        ? new Gate.Record(new LessonEvent.Shown(at, round.n()))
        : new Gate.Predict(round, missing);
  }

  private LessonEvent opened(double step) {
    boolean gauged =
        moment.prompt() instanceof Prompt.Measure measure && measure.quantity().bracket();
    boolean turn = moment.prompt() instanceof Prompt.TurnRod;
    String string = moment.prompt() instanceof Prompt.Measure measure ? measure.string() : null;
    String question = moment.asks().stream().map(LessonQuestion::question).findFirst().orElse(null);
    return new LessonEvent.Opened(
        at, moment.spot(), turn, gauged && plan.blind(), moment.before(), step, question, string);
  }

  /**
   * The gate of this step's hold point, or null; it comes after the predictions, since what is read
   * back at a turn is the turn itself.
   */
  private @Nullable Gate holdPoint() {
    Spot spot = moment.spot();
    boolean turn = moment.prompt() instanceof Prompt.TurnRod;
    if (!plan.holds(spot, turn) || moment.again()) {
      return null;
    }
    for (Keep keep : lesson.keeps()) {
      if (keep.kind() == Keep.Kind.HOLD_POINT && spot.equals(keep.spot())) {
        return keep.open() ? new Gate.Held(keep) : null;
      }
    }
    Value value =
        moment.prompt() instanceof Prompt.TurnRod rod
            ? new Value.Rod(rod.turn())
            : moment.before() == null ? Value.NONE : moment.before();
    String what =
        turn
            ? "the turn, read back before it is made"
            : value instanceof Value.None
                ? "the teacher's look at the bench"
                : "the last reading, read back";
    return new Gate.Record(new LessonEvent.Held(at, spot, what, value));
  }

  private Gate reading() {
    Round round = lesson.roundAt(moment.spot());
    if (round == null || !round.opened().blind()) {
      return new Gate.Open(null);
    }
    List<String> missing = round.toRead(lesson.students());
    if (round.unveiled() == null) {
      return missing.isEmpty() && !round.blind().isEmpty()
          ? new Gate.Record(new LessonEvent.Unveiled(at, round.n()))
          : missing.isEmpty() ? new Gate.Nobody() : new Gate.ReadBlind(round.n(), missing);
    }
    return new Gate.Open(Spread.of(round, lesson.students()));
  }
}
