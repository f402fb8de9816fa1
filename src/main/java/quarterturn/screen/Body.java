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
    // A blank row above the text, one between the text and the rest, and one for the hint. A longer
    // hint covers what is above it for a moment, so that nothing jumps.
    int room = rows - 3;
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
    history(canvas, model, at + controls.height() + 2, rows - 1);
    for (int i = 0; i < message.size(); i++) {
      canvas.row(0, rows - message.size() + i, width, ' ', Ink.PLAIN);
      canvas.put(2, rows - message.size() + i, i == 0 ? "!" : " ", Ink.STRONG);
      canvas.put(4, rows - message.size() + i, message.get(i), Ink.STRONG);
    }
    return canvas;
  }

  /** What is left of a tall window shows how the readings went. */
  private static void history(Canvas canvas, Model model, int from, int to) {
    Canvas history = HistoryPicture.draw(model.overview(), canvas.width() - 4, to - from - 1);
    if (history != null) {
      canvas.paste(2, to - history.height() - 1, history);
    }
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
