package quarterturn.screen;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import quarterturn.screen.terminal.Input;
import quarterturn.screen.terminal.Surface;

/** The home view on a terminal. */
public final class HomeFace {
  private static final Duration CALM = Duration.ofMinutes(1);

  private HomeFace() {}

  /**
   * Asks what to do.
   *
   * @param surface stays open, so that the session that is chosen can go on with it
   * @param due what is due, the most pressing first
   * @param unfinished sessions to take up that are not among those
   * @param starts what can be begun
   */
  public static HomeChoice run(
      Surface surface, List<HomeItem> due, List<HomeItem> unfinished, List<HomeItem> starts)
      throws InterruptedException {
    HomeView view = HomeView.of(due, unfinished, starts);
    while (true) {
      try {
        surface.paint(view.draw(surface.width(), surface.height()));
        Input input = surface.next(CALM);
        if (input instanceof Input.Interrupted) {
          return new HomeChoice.Interrupted();
        }
        if (input instanceof Input.Closed) {
          return new HomeChoice.Quit();
        }
        if (input instanceof Input.Broke broke) {
          throw new IllegalStateException("something broke", broke.cause());
        }
        if (input instanceof Input.Suspended) {
          surface.suspend();
        } else if (input instanceof Input.Continued) {
          surface.repaintWhole();
        } else if (input instanceof Input.Pressed pressed) {
          HomeView.Step step = view.key(pressed.key());
          if (step.choice() != null) {
            return step.choice();
          }
          view = step.view();
        }
      } catch (IOException gone) {
        return new HomeChoice.Quit();
      }
    }
  }
}
