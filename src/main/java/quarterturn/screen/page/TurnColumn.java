package quarterturn.screen.page;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Prompt;

/** Draws the dial in a column beside the text, where hazards and words can't push it away. */
final class TurnColumn {
  private static final int AROUND = 5;
  private static final int LEAST_RADIUS = 4;
  private static final int LARGEST = 7;
  private static final int LEAST_TEXT = 38;

  private TurnColumn() {}

  /** The column, or null where nothing is to be turned or it does not fit beside the text. */
  static @Nullable Canvas of(Model model, int width, int rows) {
    if (!(model.prompt() instanceof Prompt.TurnRod turn)
        || !(model.draft() instanceof Draft.Turning)) {
      return null;
    }
    int radius = Math.min(LARGEST, (rows - AROUND) / 2);
    Canvas dial = DialPicture.dial(turn.turn().degrees(), radius);
    if (radius < LEAST_RADIUS || width - dial.width() - 2 < LEAST_TEXT) {
      return null;
    }
    Canvas canvas = new Canvas(dial.width(), dial.height() + AROUND - 2);
    String what = turn.direction().toUpperCase(Locale.ROOT) + "  " + turn.turn();
    centred(canvas, 0, " " + what + " ", Ink.NOW);
    canvas.paste(0, 1, dial);
    List<String> words = List.of(DialPicture.angle(turn), "facing the truss rod nut's end");
    for (int i = 0; i < words.size(); i++) {
      centred(canvas, dial.height() + 1 + i, words.get(i), Ink.PLAIN);
    }
    return canvas;
  }

  private static void centred(Canvas canvas, int row, String text, Ink ink) {
    canvas.put(Math.max(0, (canvas.width() - Canvas.cells(text)) / 2), row, text, ink);
  }
}
