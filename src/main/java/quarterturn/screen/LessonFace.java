package quarterturn.screen;

import java.io.IOException;
import java.time.ZoneId;
import quarterturn.lesson.student.LessonSession;
import quarterturn.procedure.UnreadableException;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.ExitStatus;
import quarterturn.session.Prompt;

/** A bench in a lesson on the whole screen. */
public final class LessonFace {
  private LessonFace() {}

  /**
   * Runs a bench's sessions until they end or the bench is left, then says how to go on.
   *
   * @param surface stays open
   * @param again the command by which the bench goes on later
   */
  public static ScreenFace.Outcome run(
      Surface surface, LessonSession session, String again, ZoneId zone)
      throws IOException, InterruptedException, UnreadableException {
    ScreenFace.Outcome outcome;
    LessonCards cards = new LessonCards(session, again, System::nanoTime);
    do {
      outcome = ScreenFace.run(surface, session, zone, cards);
    } while (done(outcome, session) && session.next());
    return outcome;
  }

  private static boolean done(ScreenFace.Outcome outcome, LessonSession session) {
    return outcome.status() == ExitStatus.DONE
        && session.prompt() instanceof Prompt.Done
        && !session.lesson().over();
  }
}
