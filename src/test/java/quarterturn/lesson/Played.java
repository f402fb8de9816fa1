package quarterturn.lesson;

import java.nio.file.Path;
import java.util.Objects;
import quarterturn.lesson.student.Gate;
import quarterturn.lesson.student.LessonSession;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;

/** Plays a bench on an invented neck to where a test begins. */
public final class Played {
  private static final int MOST = 200;

  private Played() {}

  /** Whether a bench stands where it is wanted. */
  public interface There {
    boolean is(LessonSession session) throws Exception;
  }

  /** Answers for everybody until the bench stands where it is wanted. */
  public static void until(LessonSession session, Path folder, There there) throws Exception {
    for (int i = 0; i < MOST; i++) {
      session.gate();
      if (there.is(session)) {
        return;
      }
      if (session.gate() instanceof Gate.Held) {
        DemoCourse.release(session, folder);
        session.look();
      } else {
        once(session);
      }
    }
    throw new AssertionError("it never came to that; it stands at " + session.gate());
  }

  /** Answers what comes next. */
  public static void once(LessonSession session) throws Exception {
    Gate gate = session.gate();
    if (gate instanceof Gate.Predict predict) {
      session.predict(predict.round().n(), predict.missing().get(0), prediction());
    } else if (gate instanceof Gate.ReadBlind read) {
      session.read(read.round(), read.missing().get(0), new Bracket(0.6, 0.65));
    } else if (gate instanceof Gate.Reflect reflect) {
      Round round = reflect.round();
      String student = round.toReflect(session.lesson().students()).get(0);
      boolean asks = reflect.question() != null;
      session.reflect(round, student, asks ? null : "so", asks ? "a guess" : null, false);
    } else {
      session.answer(answer(session));
    }
  }

  private static Prediction prediction() {
    return new Prediction(Direction.SAME, 0.5, "it looks so", false);
  }

  private static Answer answer(LessonSession session) {
    Prompt prompt = session.prompt();
    if (prompt instanceof Prompt.Choose choose) {
      return new Answer.Chose(choose.options().get(0).id());
    }
    if (prompt instanceof Prompt.TurnRod turn) {
      return new Answer.Turned(turn.turn(), Feel.SMOOTH);
    }
    if (prompt instanceof Prompt.Measure measure) {
      return measure.quantity().bracket()
          ? new Answer.Measured(Objects.requireNonNull(session.leaves(1, "Ana")))
          : new Answer.Value(50);
    }
    if (prompt instanceof Prompt.Write) {
      return new Answer.Wrote("-");
    }
    return prompt instanceof Prompt.Wait ? new Answer.Waited(null) : new Answer.Confirmed();
  }
}
