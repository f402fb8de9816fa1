package quarterturn.screen;

import java.util.ArrayList;
import java.util.List;
import quarterturn.lesson.Waiting;
import quarterturn.lesson.teacher.Called;
import quarterturn.lesson.teacher.DeskView;
import quarterturn.lesson.teacher.DeskWords;
import quarterturn.procedure.read.Strays;
import quarterturn.screen.page.Foot;
import quarterturn.screen.page.KeyHints;
import quarterturn.screen.page.Line;
import quarterturn.screen.page.Page;
import quarterturn.screen.page.TooSmall;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Question;
import quarterturn.unit.Printable;

/** Draws the desk's whole screen, from the model and the size alone. */
final class DeskPage {
  private static final int HEAD = 3;
  private static final int FOOT = 4;
  private static final int SIDE = 44;

  /** Rows above and below the lines of an open view. */
  private static final int AROUND = 4;

  private DeskPage() {}

  static Canvas draw(DeskModel model, int width, int height) {
    if (TooSmall.is(width, height)) {
      return TooSmall.draw(width, height);
    }
    Canvas canvas = new Canvas(width, height);
    head(canvas, model);
    int rows = height - HEAD - FOOT;
    int main = width >= Page.WIDE ? width - SIDE - 3 : width;
    canvas.paste(0, HEAD, main(model, main, rows));
    if (main < width) {
      for (int r = 0; r < rows; r++) {
        canvas.set(main, HEAD + r, '│');
      }
      canvas.set(main, HEAD - 1, '┬');
      Canvas side = new Canvas(SIDE, rows);
      Line.draw(side, 0, 0, side(model, SIDE - 2), 0, rows);
      canvas.paste(main + 2, HEAD, side);
    }
    foot(canvas, model);
    return canvas;
  }

  private static void head(Canvas canvas, DeskModel model) {
    int room = canvas.width() - 4;
    String name = model.sight().desk();
    String right = name.startsWith("desk") ? name : "desk " + name;
    String left = Printable.of(model.sight().plan().title());
    canvas.put(2, 0, Wrap.cut(left, room - Canvas.cells(right) - 2), Ink.STRONG);
    canvas.put(canvas.width() - 2 - Canvas.cells(right), 0, right);
    int open = model.sight().unanswered().size();
    String orders =
        open == 0 ? "" : "; " + open + (open == 1 ? " order" : " orders") + " not taken yet";
    canvas.put(2, 1, Wrap.cut(DeskWords.summary(model.sight()) + orders, room));
    canvas.row(0, 2, canvas.width(), '─', Ink.PLAIN);
  }

  private static void foot(Canvas canvas, DeskModel model) {
    int room = canvas.width() - 4;
    int top = canvas.height() - FOOT;
    String message = model.message();
    if (message.isEmpty()) {
      message =
          model.sight().notices().stream()
              .filter(notice -> !Strays.is(notice))
              .findFirst()
              .map("Notice: "::concat)
              .orElse("");
    }
    List<String> lines = message.isEmpty() ? List.of() : Wrap.lines(message, room - 2);
    for (int i = 0; i < Math.min(2, lines.size()); i++) {
      String line =
          i == 1 && lines.size() > 2 ? Wrap.cut(lines.get(1) + "…", room - 3) : lines.get(i);
      canvas.put(2, top + i, i == 0 ? "!" : " ", Ink.STRONG);
      canvas.put(4, top + i, line, Ink.STRONG);
    }
    canvas.row(0, top + 2, canvas.width(), '─', Ink.PLAIN);
    Foot.keys(canvas, top + 3, hints(model), room);
  }

  private static List<KeyHints.Hint> hints(DeskModel model) {
    if (model.asked() != null) {
      return List.of(
          new KeyHints.Hint(
              "Enter", model.asked() instanceof Question.Asked ? "accept" : "let it go on"),
          new KeyHints.Hint("Esc", "back"),
          new KeyHints.Hint("F1", "help"));
    }
    return switch (model.layer()) {
      case NONE ->
          List.of(
              new KeyHints.Hint("r", "release"),
              new KeyHints.Hint("h", "hold"),
              new KeyHints.Hint("l", "levels"),
              new KeyHints.Hint("Enter", "bench"),
              new KeyHints.Hint("s", "spread"),
              new KeyHints.Hint("o", "orders"),
              new KeyHints.Hint("e", "end"),
              new KeyHints.Hint("q", "leave"),
              new KeyHints.Hint("?", "keys"));
      case KEYS -> List.of(new KeyHints.Hint("any key", "back to the benches"));
      case BENCH, SPREAD, ORDERS ->
          List.of(
              new KeyHints.Hint("↑ ↓", "scroll"),
              new KeyHints.Hint("Esc", "back"),
              new KeyHints.Hint("?", "keys"));
      case LEVEL ->
          List.of(
              new KeyHints.Hint("↑ ↓", "student"),
              new KeyHints.Hint("1-4", "level"),
              new KeyHints.Hint("f", "keep it so, or not"),
              new KeyHints.Hint("Esc", "back"),
              new KeyHints.Hint("?", "keys"));
    };
  }

  private static Canvas main(DeskModel model, int width, int rows) {
    if (benches(model)) {
      return DeskRows.draw(model, width, rows);
    }
    Canvas canvas = new Canvas(width, rows);
    canvas.put(2, 1, Wrap.cut(title(model), width - 4), Ink.STRONG);
    List<Line> lines = DeskLayers.lines(model, inner(width));
    int room = room(model, rows);
    int from = Math.min(model.scroll(), Math.max(0, lines.size() - room));
    Line.draw(canvas, 2, 3, lines, from, room);
    if (from + room < lines.size()) {
      canvas.put(2, rows - 1, "▼ more below");
    }
    if (model.asked() instanceof Question.Asked) {
      int at = 3 + Math.min(lines.size(), room);
      canvas.put(2, at, "► ", Ink.STRONG);
      String typed = model.field().text();
      String before = Wrap.cutFront(typed.substring(0, model.field().at()), width - 8);
      int cursor = canvas.put(4, at, before, Ink.MARKED);
      canvas.put(cursor, at, typed.substring(model.field().at()) + " ", Ink.MARKED);
      canvas.cursor(cursor, at);
    }
    return canvas;
  }

  private static int inner(int width) {
    return Math.min(width - 4, 90);
  }

  private static boolean benches(DeskModel model) {
    return model.asked() == null && model.layer() == DeskLayer.NONE;
  }

  /** Rows that are left for the lines of an open view. */
  private static int room(DeskModel model, int rows) {
    return rows - AROUND - (model.asked() instanceof Question.Asked ? 1 : 0);
  }

  private static String title(DeskModel model) {
    DeskView.Row row = model.row();
    Question asked = model.asked();
    if (asked != null) {
      return asked.title();
    }
    return switch (model.layer()) {
      case BENCH, LEVEL -> (row == null ? "" : Called.name(row) + ": ") + model.layer().title();
      default -> model.layer().title();
    };
  }

  static int mostScroll(DeskModel model, int width, int height) {
    if (benches(model) || TooSmall.is(width, height)) {
      return 0;
    }
    int main = width >= Page.WIDE ? width - SIDE - 3 : width;
    int lines = DeskLayers.lines(model, inner(main)).size();
    return Math.max(0, lines - room(model, height - HEAD - FOOT));
  }

  /** The column beside the benches: predictions, readings and the newest orders. */
  private static List<Line> side(DeskModel model, int width) {
    List<Line> out = new ArrayList<>();
    out.add(Line.BLANK);
    out.add(Line.heading(DeskLayer.SPREAD.title()));
    DeskLayers.spread(out, model, width);
    out.add(Line.BLANK);
    out.add(Line.heading(DeskLayer.ORDERS.title()));
    DeskLayers.orders(out, model, width);
    return out;
  }

  /** The ink for a bench's state, which is also told in words. */
  static Ink ink(DeskView.Row row) {
    return row.waiting().kind() == Waiting.Kind.STOPPED
        ? Ink.SIGNAL
        : row.waiting().kind() == Waiting.Kind.HELD ? Ink.STRONG : Ink.PLAIN;
  }
}
