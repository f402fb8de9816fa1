package quarterturn.screen;

import java.time.ZoneId;
import java.util.List;

/**
 * The step itself: its text, its picture, what to answer with, and a line for hints. The text comes
 * first when there is too little room, then what to answer with, then the picture.
 */
final class Body {
  private static final int LEAST_TEXT = 3;
  private static final int WIDEST_TEXT = 92;

  private Body() {}

  static Canvas draw(Model model, ZoneId zone, int width, int rows) {
    Canvas canvas = new Canvas(width, rows);
    int inner = width - 4;
    List<Line> text = Flow.of(model, Math.min(inner, WIDEST_TEXT));
    List<String> message =
        model.message().isEmpty() ? List.of() : Wrap.lines(model.message(), inner - 2);
    int hint = Math.max(1, message.size());
    // A blank row above the text, one between the text and the rest, and the hint.
    int room = rows - 2 - hint;
    Canvas controls = Controls.of(model, zone, Math.min(inner, WIDEST_TEXT), room - LEAST_TEXT);
    int textRows = Math.min(text.size(), room - controls.height());
    int left = room - controls.height() - textRows - 1;
    Canvas picture = left < 3 ? null : Pictures.of(model, inner, left);
    text(canvas, model, text, textRows);
    int at = 1 + textRows + 1;
    if (picture != null) {
      canvas.paste(2, at, picture);
      at += picture.height() + 1;
    }
    canvas.paste(2, at, controls);
    for (int i = 0; i < message.size(); i++) {
      canvas.put(2, rows - hint + i, i == 0 ? "!" : " ", Ink.STRONG);
      canvas.put(4, rows - hint + i, message.get(i), Ink.STRONG);
    }
    return canvas;
  }

  private static void text(Canvas canvas, Model model, List<Line> text, int rows) {
    int from = Math.min(model.scroll(), Math.max(0, text.size() - rows));
    Line.draw(canvas, 2, 1, text, from, rows);
    int below = text.size() - from - rows;
    if (below > 0) {
      mark(canvas, rows + 1, "▼ PgDn, " + below + " more");
    }
    if (from > 0) {
      mark(canvas, 0, "▲ PgUp");
    }
  }

  private static void mark(Canvas canvas, int row, String words) {
    canvas.put(canvas.width() - 2 - Canvas.cells(words), row, words, Ink.STRONG);
  }
}
