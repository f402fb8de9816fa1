package quarterturn.screen;

import java.io.IOException;
import java.time.Duration;
import quarterturn.screen.terminal.Input;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;

/** The home view on a terminal. */
public final class HomeFace {
  private static final Duration CALM = Duration.ofMinutes(1);

  private HomeFace() {}

  /**
   * Shows the options until one is taken or the terminal is gone.
   *
   * @param surface the surface to paint on, which is not closed, so that the chosen session can use
   *     it
   */
  public static Dialogue.End run(Surface surface, Question.Choose question, Dialogue dialogue)
      throws InterruptedException {
    HomeView view = new HomeView(question);
    while (true) {
      try {
        surface.paint(view.draw(surface.width(), surface.height()));
        Input input = surface.next(CALM);
        if (input instanceof Input.Over over) {
          boolean interrupted = over.status() == ExitStatus.INTERRUPTED;
          return interrupted ? Dialogue.End.INTERRUPTED : Dialogue.End.CUT_SHORT;
        }
        if (input instanceof Input.Broke broke) {
          throw new IllegalStateException("something broke", broke.cause());
        }
        if (input instanceof Input.Pressed pressed) {
          String answer = view.answer(pressed.key());
          if (answer != null) {
            dialogue.take(answer);
            return Dialogue.End.ANSWERED;
          }
          view = view.key(pressed.key());
        }
      } catch (IOException | RefusedException gone) {
        return Dialogue.End.CUT_SHORT;
      }
    }
  }
}
