package quarterturn.screen.page;

import java.util.List;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;

/** Draws the message for a terminal that is too small. */
public final class TooSmall {
  static final int COLUMNS = 60;
  static final int ROWS = 18;

  private TooSmall() {}

  public static boolean is(int width, int height) {
    return width < COLUMNS || height < ROWS;
  }

  public static Canvas draw(int width, int height) {
    Canvas canvas = new Canvas(width, height);
    List<String> lines =
        Wrap.lines(
            "This window is a little small: "
                + width
                + " by "
                + height
                + ".\nPlease make it "
                + COLUMNS
                + " by "
                + ROWS
                + " or larger; 80 by 24 is comfortable.\n"
                + "Or leave with Ctrl-C and start again with --plain.",
            Math.max(1, width - 2));
    canvas.paste(1, 0, Canvas.of(lines, width, Ink.PLAIN));
    return canvas;
  }
}
