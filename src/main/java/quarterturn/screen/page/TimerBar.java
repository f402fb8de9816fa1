package quarterturn.screen.page;

import java.time.Duration;
import java.time.Instant;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;

/** Draws how much of a wait has passed. */
final class TimerBar {
  private TimerBar() {}

  /** One row: a bar filled for the time passed, and its percentage. */
  static Canvas draw(Instant from, Instant until, Instant now, int width) {
    Canvas canvas = new Canvas(width, 1);
    int cells = Math.max(1, width - 6);
    double whole = Math.max(1, Duration.between(from, until).toMillis());
    double gone = Math.max(0, Math.min(1, Duration.between(from, now).toMillis() / whole));
    int full = (int) Math.floor(gone * cells);
    canvas.row(0, 0, full, '█', Ink.PLAIN);
    canvas.row(full, 0, cells - full, '░', Ink.PLAIN);
    canvas.put(cells + 1, 0, (int) Math.floor(gone * 100) + " %");
    return canvas;
  }

  /** Time left in words: "4 min 20 s", "23 h 5 min". */
  static String words(Duration left) {
    long seconds = Math.max(0, (left.toMillis() + 999) / 1000);
    if (seconds < 60) {
      return seconds + " s";
    }
    if (seconds < 3600) {
      return seconds / 60 + " min " + seconds % 60 + " s";
    }
    return seconds / 3600 + " h " + seconds % 3600 / 60 + " min";
  }
}
