package quarterturn.screen;

import java.util.List;
import quarterturn.lesson.teacher.Called;
import quarterturn.lesson.teacher.DeskView;
import quarterturn.lesson.teacher.DeskWords;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Program;

/**
 * The list of benches: stopped ones first, then those that have waited longest, with the marked one
 * in view.
 */
final class DeskRows {
  private static final int EACH = 4;

  private DeskRows() {}

  static Canvas draw(DeskModel model, int width, int rows) {
    Canvas canvas = new Canvas(width, rows);
    List<DeskView.Row> benches = model.sight().view().rows();
    if (benches.isEmpty()) {
      canvas.put(
          2,
          1,
          "No bench has joined yet. At a bench: " + Program.here().typed("lesson join FOLDER"));
      return canvas;
    }
    // Where they would not fit, the blank row between two of them goes.
    int each = benches.size() * EACH > rows - 1 ? EACH - 1 : EACH;
    int room = Math.max(1, (rows - 2) / each);
    int from = Math.max(0, Math.min(model.at() - room + 1, benches.size() - room));
    for (int i = from; i < Math.min(benches.size(), from + room); i++) {
      row(canvas, model, benches.get(i), 1 + (i - from) * each);
    }
    if (from > 0) {
      mark(canvas, 0, "▲ " + from + " more");
    }
    int below = benches.size() - from - room;
    if (below > 0) {
      mark(canvas, rows - 1, "▼ " + below + " more");
    }
    return canvas;
  }

  private static void row(Canvas canvas, DeskModel model, DeskView.Row row, int at) {
    int width = canvas.width();
    boolean on = row.equals(model.row());
    canvas.put(1, at, on ? "►" : " ", Ink.STRONG);
    String where = Wrap.cut(DeskWords.where(model.sight(), row.bench()), width / 2);
    int name = width - 2 - Canvas.cells(where) - 6;
    String called = Wrap.cut(Called.name(row), Math.max(8, name / 2));
    int end = canvas.put(3, at, " " + called + " ", on ? Ink.NOW : Ink.STRONG);
    String who = DeskWords.who(row.bench());
    canvas.put(end + 1, at, Wrap.cut(who, width - 4 - Canvas.cells(where) - end));
    canvas.put(width - 2 - Canvas.cells(where), at, where);
    canvas.put(
        6, at + 1, Wrap.cut(DeskWords.standsFor(model.sight(), row), width - 8), DeskPage.ink(row));
    String heard = DeskWords.heard(model.sight(), row);
    canvas.put(6, at + 2, Wrap.cut(heard, width - 8));
  }

  private static void mark(Canvas canvas, int row, String words) {
    canvas.put(canvas.width() - 2 - Canvas.cells(words), row, words, Ink.STRONG);
  }
}
