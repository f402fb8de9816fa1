package quarterturn.screen;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.page.Foot;
import quarterturn.screen.page.KeyHints;
import quarterturn.screen.page.Line;
import quarterturn.screen.page.TooSmall;
import quarterturn.screen.state.Picks;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Key;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Question;

/**
 * The state of the full-screen list that is shown when the program starts without arguments.
 *
 * @param at index of the marked option
 * @param message a hint; empty for none
 */
record HomeView(Question.Choose question, int at, String message) {
  /** A view with the first option marked. */
  HomeView(Question.Choose question) {
    this(question, 0, "");
  }

  /** The view after a key that chooses no option. */
  HomeView key(Key key) {
    int to = Picks.moved(at, question.options().size(), key);
    if (to != at) {
      return new HomeView(question, to, "");
    }
    String hint =
        key == Key.Named.ESC
            ? "Esc never leaves; q does."
            : Update.isLetter(key, '?') || key.equals(new Key.Function(1))
                ? "Keys: a number or the arrows mark a line, Enter goes on, q closes."
                : "Mark a line with its number or the arrows, then Enter.";
    return new HomeView(question, at, hint);
  }

  /** The text that a key gives as an answer, or null where it gives none. */
  @Nullable String answer(Key key) {
    if (key == Key.Named.ENTER) {
      return String.valueOf(at + 1);
    }
    return Update.isLetter(key, 'q') || key.equals(new Key.Function(10)) ? "quit" : null;
  }

  Canvas draw(int width, int height) {
    if (TooSmall.is(width, height)) {
      return TooSmall.draw(width, height);
    }
    Canvas canvas = new Canvas(width, height);
    canvas.put(2, 0, Wrap.cut(question.lines().get(0), width - 4), Ink.STRONG);
    canvas.row(0, 1, width, '─', Ink.PLAIN);
    canvas.row(0, height - 2, width, '─', Ink.PLAIN);
    List<Line> lines = lines(width - 4);
    List<String> caution = Wrap.lines(question.lines().get(1), width - 4);
    canvas.paste(2, height - 3 - caution.size(), Canvas.of(caution, width - 4, Ink.PLAIN));
    int room = height - 6 - caution.size();
    int marked = 0;
    for (int i = 0; i < lines.size(); i++) {
      marked = lines.get(i).lead().startsWith("►") ? i : marked;
    }
    int from = Math.max(0, Math.min(marked - room / 2, lines.size() - room));
    Line.draw(canvas, 2, 2, lines, from, room);
    if (!message.isEmpty()) {
      canvas.put(2, height - 3, "! " + Wrap.cut(message, width - 6), Ink.STRONG);
    }
    Foot.keys(
        canvas,
        height - 1,
        List.of(
            new KeyHints.Hint("1-9 ↑ ↓", "mark"),
            new KeyHints.Hint("Enter", "go"),
            new KeyHints.Hint("q", "close")),
        width - 4);
    return canvas;
  }

  private List<Line> lines(int width) {
    List<Line> out = new ArrayList<>();
    out.add(Line.BLANK);
    String group = "";
    for (int i = 0; i < question.options().size(); i++) {
      Question.Option option = question.options().get(i);
      if (!option.group().equals(group)) {
        group = option.group();
        out.add(Line.heading(group));
        out.add(Line.BLANK);
      }
      boolean on = i == at;
      String lead = (on ? "►" : " ") + String.format("%2d ", i + 1);
      String label = Wrap.cut(option.label(), width - 5);
      out.add(new Line(lead, Ink.STRONG, 4, " " + label + " ", on ? Ink.NOW : Ink.STRONG));
      for (String line : Wrap.lines(option.detail(), Math.min(width - 5, 90))) {
        out.add(new Line("", Ink.PLAIN, 5, line, Ink.PLAIN));
      }
      out.add(Line.BLANK);
    }
    return out;
  }
}
