package quarterturn.screen;

import java.io.IOException;
import java.time.ZoneId;
import quarterturn.lesson.student.BenchWords;
import quarterturn.lesson.student.LessonSession;
import quarterturn.procedure.UnreadableException;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.ExitStatus;
import quarterturn.session.Prompt;

/** A lesson's bench on the full screen. */
public final class LessonFace {
  private LessonFace() {}

  /**
   * Runs a bench's sessions until they end or the person leaves, then tells how to resume.
   *
   * @param surface the surface to paint on, which is not closed
   * @param again the command that resumes the bench later
   * @param told what is said on the first card, or empty
   */
  public static ScreenFace.Outcome run(
      Surface surface, LessonSession session, String again, ZoneId zone, String told)
      throws IOException, InterruptedException, UnreadableException {
    ScreenFace.Outcome outcome;
    LessonCards cards = new LessonCards(session, again, System::nanoTime, told);
    do {
      outcome = ScreenFace.run(surface, session, zone, cards);
    } while (done(outcome, session) && session.next());
    return done(outcome, session)
        ? new ScreenFace.Outcome(outcome.status(), outcome.farewell() + "\n" + BenchWords.DONE)
        : outcome;
  }

  private static boolean done(ScreenFace.Outcome outcome, LessonSession session) {
    return outcome.status() == ExitStatus.DONE
        && session.prompt() instanceof Prompt.Done
        && !session.lesson().over();
  }
}
