package quarterturn.lesson.student;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Keep;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Questioning;
import quarterturn.lesson.Round;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Spread;
import quarterturn.lesson.Value;
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
    Gate first = earlier();
    if (first == null) {
      first = round();
    }
    if (first == null) {
      first = holdPoint();
    }
    return first == null ? reading() : first;
  }

  /**
   * What is still to be done about earlier rounds, or the note that the bench has moved on; null
   * where neither.
   */
  private @Nullable Gate earlier() {
    for (Map.Entry<Integer, Value> came : moment.came().entrySet()) {
      Round round = lesson.round(came.getKey());
      if (round != null && round.shown() != null && round.result() == null && !moment.again()) {
        return new Gate.Record(new LessonEvent.Resulted(at, round.n(), came.getValue()));
      }
    }
    if (!moment.spot().equals(lesson.spot())) {
      return new Gate.Record(new LessonEvent.Stepped(at, moment.spot()));
    }
    Round round = moment.again() ? null : lesson.reflecting();
    return round == null ? null : reflect(round);
  }

  private Gate reflect(Round round) {
    List<String> missing = round.toReflect(lesson.students());
    String question = round.opened().question();
    boolean why = round.opened().turn() && plan.questions() != Questioning.FEW;
    return question != null || why
        ? new Gate.Reflect(round, missing, question)
        : new Gate.Record(round.way(at, missing.get(0), null));
  }

  /** The prediction that is due: first the way of a turn, then the gap that it will leave. */
  private @Nullable Gate round() {
    Prompt prompt = moment.prompt();
    if (moment.again()) {
      return null;
    }
    if (prompt instanceof Prompt.Measure) {
      return predicted(false);
    }
    boolean turn = prompt instanceof Prompt.TurnRod;
    Gate way = turn || moment.turns() ? predicted(true) : null;
    return way != null || !turn ? way : predicted(false);
  }

  private @Nullable Gate predicted(boolean turn) {
    Round round = lesson.pending(turn);
    if (round == null) {
      return new Gate.Record(opened(turn));
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

  private LessonEvent opened(boolean turn) {
    boolean number = false;
    boolean unasked = false;
    String string = null;
    if (moment.prompt() instanceof Prompt.Measure measure) {
      number = !measure.quantity().bracket();
      string = measure.string();
      // The air and what repeats teach nothing about this neck.
      unasked = moment.repeats() || !measure.quantity().onString();
    }
    boolean asked = !turn && !unasked;
    return new LessonEvent.Opened(
        at,
        moment.spot(),
        turn,
        asked && !number && plan.blind(),
        moment.before(),
        moment.step(),
        asked ? plan.questions().choose(moment.asks(), lesson.rounds(), moment.spot()) : null,
        unasked ? true : null,
        string);
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
    Round round = moment.prompt() instanceof Prompt.Measure ? lesson.pending(false) : null;
    if (round == null || !round.opened().blind() || moment.again()) {
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
