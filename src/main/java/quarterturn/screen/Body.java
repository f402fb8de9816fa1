package quarterturn.screen;

import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The step itself: its text, its picture, what to answer with, and a line for hints. The text comes
 * first when there is too little room, then what to answer with, then the picture.
 */
final class Body {
  private static final int LEAST_TEXT = 3;
  private static final int WIDEST_TEXT = 92;
  private static final int LEAST_PICTURE = 3;

  private final Model model;
  private final int width;
  private final int rows;
  private final List<Line> text;
  private final int textRows;
  private final Canvas controls;
  private final @Nullable Canvas picture;

  /** Divides the room. */
  Body(Model model, ZoneId zone, int width, int rows) {
    this.model = model;
    this.width = width;
    this.rows = rows;
    int inner = width - 4;
    text = Flow.of(model, Math.min(inner, WIDEST_TEXT));
    // A blank row above the text, one between the text and the rest, and one for the hint. A longer
    // hint covers what is above it for a moment, so that nothing jumps.
    int room = rows - 3;
    int least = Math.min(LEAST_TEXT, text.size());
    controls = Controls.of(model, zone, Math.min(inner, WIDEST_TEXT), room - least);
    textRows = Math.min(text.size(), room - controls.height());
    int left = room - controls.height() - textRows - 1;
    picture = left < LEAST_PICTURE ? null : Pictures.of(model, inner, left);
  }

  /** Whether there is a picture that found no room. */
  boolean hidesPicture() {
    return picture == null && Pictures.of(model, 2 * width, 2 * rows) != null;
  }

  /** How far the text can be scrolled. */
  int mostScroll() {
    return Math.max(0, text.size() - textRows);
  }

  Canvas draw() {
    Canvas canvas = new Canvas(width, rows);
    drawText(canvas);
    int at = 1 + textRows + 1;
    if (picture != null) {
      canvas.paste(2, at, picture);
      at += picture.height() + 1;
    }
    canvas.paste(2, at, controls);
    history(canvas, at + controls.height() + 2, rows - 1);
    message(canvas);
    return canvas;
  }

  private void message(Canvas canvas) {
    if (model.message().isEmpty()) {
      return;
    }
    List<String> lines = Wrap.lines(model.message(), width - 6);
    for (int i = 0; i < lines.size(); i++) {
      int row = rows - lines.size() + i;
      canvas.row(0, row, width, ' ', Ink.PLAIN);
      canvas.put(2, row, i == 0 ? "!" : " ", Ink.STRONG);
      canvas.put(4, row, lines.get(i), Ink.STRONG);
    }
  }

  /** What is left of a tall window shows how the readings went. */
  private void history(Canvas canvas, int from, int to) {
    Canvas history = HistoryPicture.draw(model.overview(), canvas.width() - 4, to - from - 1);
    if (history != null) {
      canvas.paste(2, to - history.height() - 1, history);
    }
  }

  private void drawText(Canvas canvas) {
    int from = Math.min(model.scroll(), mostScroll());
    Line.draw(canvas, 2, 1, text, from, textRows);
    int below = text.size() - from - textRows;
    if (below > 0) {
      mark(canvas, textRows + 1, "▼ PgDn, " + below + " more");
    }
    if (from > 0) {
      mark(canvas, 0, "▲ PgUp");
    }
  }

  private static void mark(Canvas canvas, int row, String words) {
    canvas.put(canvas.width() - 2 - Canvas.cells(words), row, words, Ink.STRONG);
  }
}
