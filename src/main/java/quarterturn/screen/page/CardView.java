package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.List;
import quarterturn.screen.state.Field;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Overview;
import quarterturn.session.Question;
import quarterturn.unit.Printable;

/** Draws a card of a lesson over a session, whose head stays in view; the foot names the keys. */
public final class CardView {
  private static final int WIDEST = 92;
  private static final int FOOT = 2;
  private static final int TOP = Head.ROWS + 3;

  private CardView() {}

  /**
   * A canvas with the card.
   *
   * @param scroll lines scrolled down
   * @param message a hint, or empty
   */
  public static Canvas draw(
      Question card,
      Field field,
      int scroll,
      String message,
      Overview overview,
      int width,
      int height) {
    if (TooSmall.is(width, height)) {
      return TooSmall.draw(width, height);
    }
    Canvas canvas = new Canvas(width, height);
    Head.draw(canvas, overview);
    int inner = Math.min(width - 4, WIDEST);
    canvas.put(2, Head.ROWS + 1, " " + Wrap.cut(card.title(), inner - 2) + " ", Ink.NOW);
    List<String> said = message.isEmpty() ? List.of() : Wrap.lines(message, width - 6);
    List<Line> text = text(card, inner);
    List<String> asks = asks(card, inner);
    int room = room(asks, said.size(), height);
    Pane pane = Pane.of(text, text.size(), List.of(), Math.min(room, text.size()), scroll, -1, -1);
    pane.draw(canvas, 2, TOP);
    int at = TOP + pane.rows() + 1;
    for (String line : asks) {
      canvas.put(2, at++, line, Ink.STRONG);
    }
    if (asks.isEmpty()) {
      canvas.put(2, at, card.help(), Ink.STRONG);
    } else {
      field(
          canvas,
          at,
          field,
          card instanceof Question.Asked asked && asked.hidden(),
          Math.min(62, inner - 4));
    }
    for (int i = 0; i < said.size(); i++) {
      int row = height - FOOT - said.size() + i;
      canvas.row(0, row, canvas.width(), ' ', Ink.PLAIN);
      canvas.put(2, row, i == 0 ? "!" : " ", Ink.STRONG);
      canvas.put(4, row, said.get(i), Ink.STRONG);
    }
    canvas.row(0, height - FOOT, width, '─', Ink.PLAIN);
    Foot.keys(canvas, height - 1, hints(card), width - 4);
    return canvas;
  }

  private static List<String> asks(Question card, int width) {
    return card instanceof Question.Asked asked ? Wrap.lines(asked.asks(), width) : List.of();
  }

  /** Rows for a card's text, above what it asks, the field, and what is said of the last key. */
  private static int room(List<String> asks, int said, int height) {
    int controls = asks.isEmpty() ? 1 : asks.size() + 1;
    return Math.max(1, height - TOP - controls - FOOT - 2 - Math.max(1, said));
  }

  /** Lines that a key for a page scrolls. */
  public static int page(Question card, int width, int height) {
    return Math.max(1, room(asks(card, Math.min(width - 4, WIDEST)), 1, height) - 1);
  }

  /** Most lines that a card can be scrolled down. */
  public static int mostScroll(Question card, int width, int height) {
    int inner = Math.min(width - 4, WIDEST);
    return Math.max(0, text(card, inner).size() - room(asks(card, inner), 1, height));
  }

  private static List<Line> text(Question card, int width) {
    List<Line> out = new ArrayList<>();
    for (String line : card.lines()) {
      out.addAll(Line.wrapped(Printable.of(line), width));
    }
    return out;
  }

  /** Draws a field to type in, with the cursor in it. */
  public static void field(Canvas canvas, int row, Field field, boolean hidden, int cells) {
    int at = canvas.put(2, row, "[ ", Ink.STRONG);
    String text = field.text().substring(0, field.at());
    String before = Wrap.cutFront(hidden ? "*".repeat(text.length()) : text, cells - 2);
    String rest = field.text().substring(field.at());
    int cursor = canvas.put(at, row, before);
    canvas.put(
        cursor,
        row,
        Wrap.cut(hidden ? "*".repeat(rest.length()) : rest, cells - Canvas.cells(before)));
    canvas.cursor(cursor, row);
    canvas.put(at + cells, row, " ]", Ink.STRONG);
  }

  private static List<KeyHints.Hint> hints(Question card) {
    List<KeyHints.Hint> out = new ArrayList<>();
    if (!(card instanceof Question.Hold)) {
      out.add(new KeyHints.Hint("Enter", card instanceof Question.Asked ? "accept" : "go on"));
    }
    out.add(new KeyHints.Hint("F8", "stop the bench"));
    out.add(new KeyHints.Hint("Esc", "back"));
    out.add(new KeyHints.Hint("F10", "leave"));
    out.add(new KeyHints.Hint("F1", "help"));
    return out;
  }
}
