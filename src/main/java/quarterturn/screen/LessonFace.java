package quarterturn.screen;

import java.io.IOException;
import java.time.ZoneId;
import org.jline.terminal.Terminal;
import quarterturn.lesson.bench.LessonSession;
import quarterturn.procedure.UnreadableException;
import quarterturn.screen.terminal.Settings;
import quarterturn.screen.terminal.Surface;
import quarterturn.screen.terminal.SystemTerminal;
import quarterturn.session.ExitStatus;
import quarterturn.session.Prompt;

/** A bench in a lesson on the whole screen. */
public final class LessonFace {
  private LessonFace() {}

  /**
   * Runs a bench's sessions until they end or the bench is left, then says how to go on.
   *
   * @param terminal as {@link SystemTerminal#open} gives it; stays open
   * @param again the command by which the bench goes on later
   * @return the program's exit status
   */
  public static int run(
      Terminal terminal, LessonSession session, String again, Settings settings, ZoneId zone)
      throws IOException, InterruptedException, UnreadableException {
    ScreenFace.Outcome outcome;
    try (Surface surface = Surface.open(terminal, settings)) {
      LessonCards cards = new LessonCards(session, again, System::nanoTime);
      do {
        outcome = ScreenFace.run(surface, session, zone, cards);
      } while (done(outcome, session) && session.next());
    }
    ScreenFace.say(terminal, outcome);
    return outcome.status();
  }

  private static boolean done(ScreenFace.Outcome outcome, LessonSession session) {
    return outcome.status() == ExitStatus.DONE
        && session.prompt() instanceof Prompt.Done
        && !session.lesson().over();
  }
}
