package quarterturn.screen;

import java.io.IOException;
import java.time.Duration;
import java.util.Objects;
import quarterturn.screen.terminal.Input;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.store.HomeDialogue;

/** The home view on a terminal. */
public final class HomeFace {
  private static final Duration CALM = Duration.ofMinutes(1);

  private HomeFace() {}

  /**
   * Asks what to do until something is chosen or the terminal is gone; false after Ctrl-C.
   *
   * @param surface stays open, so that the session that is chosen can go on with it
   */
  public static boolean run(Surface surface, HomeDialogue dialogue) throws InterruptedException {
    HomeView view = new HomeView(Objects.requireNonNull(dialogue.question()));
    while (true) {
      try {
        surface.paint(view.draw(surface.width(), surface.height()));
        Input input = surface.next(CALM);
        if (input instanceof Input.Interrupted || input instanceof Input.Closed) {
          return input instanceof Input.Closed;
        }
        if (input instanceof Input.Broke broke) {
          throw new IllegalStateException("something broke", broke.cause());
        }
        if (input instanceof Input.Suspended) {
          surface.suspend();
        } else if (input instanceof Input.Continued) {
          surface.repaintWhole();
        } else if (input instanceof Input.Pressed pressed) {
          String answer = view.answer(pressed.key());
          if (answer != null) {
            dialogue.take(answer);
            return true;
          }
          view = view.key(pressed.key());
        }
      } catch (IOException gone) {
        return true;
      }
    }
  }
}
