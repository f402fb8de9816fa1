package quarterturn.screen;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.page.CardView;
import quarterturn.screen.page.Foot;
import quarterturn.screen.page.KeyHints;
import quarterturn.screen.page.Line;
import quarterturn.screen.page.TooSmall;
import quarterturn.screen.state.Field;
import quarterturn.screen.state.Picks;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Key;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Question;
import quarterturn.unit.Printable;

/**
 * A question on the full screen, with a list of options to mark or a field to type in.
 *
 * @param at index of the marked option
 * @param message a hint; empty for none
 */
record QuestionView(Question.Asked question, int at, Field field, String message) {
  private static final Key LEAVE = new Key.Function(10);

  /** Lines kept in view from the marked option's on. */
  private static final int BELOW = 4;

  /** A view with the first option marked. */
  QuestionView(Question.Asked question) {
    this(question, 0, Field.EMPTY, "");
  }

  QuestionView saying(String said) {
    return new QuestionView(question, at, field, said);
  }

  private List<Question.Option> options() {
    return question instanceof Question.Choose choose ? choose.options() : List.of();
  }

  /** The view after a key that answers nothing. */
  QuestionView key(Key key) {
    int to = Picks.moved(at, options().size(), key);
    if (to != at) {
      return new QuestionView(question, to, field, "");
    }
    boolean help = Update.isLetter(key, '?') || key.equals(new Key.Function(1));
    if (options().isEmpty() && !(help && field.blank()) && key != Key.Named.ESC) {
      return new QuestionView(question, at, field.with(key), "");
    }
    return saying(
        key == Key.Named.ESC
            ? "Esc never leaves; " + leaving() + " does."
            : options().isEmpty()
                ? question.help()
                : help
                    ? "Keys: a number or the arrows mark a line, Enter goes on, q closes."
                    : "Mark a line with its number or the arrows, then Enter.");
  }

  private String leaving() {
    return options().isEmpty() ? "F10" : "q";
  }

  /** Whether a key leaves the question without an answer. */
  boolean leaves(Key key) {
    return key.equals(LEAVE) || (!options().isEmpty() && Update.isLetter(key, 'q'));
  }

  /** The text that a key gives as an answer, or null where it gives none. */
  @Nullable String answer(Key key) {
    if (key != Key.Named.ENTER) {
      return null;
    }
    return options().isEmpty() ? field.text().strip() : String.valueOf(at + 1);
  }

  Canvas draw(int width, int height) {
    if (TooSmall.is(width, height)) {
      return TooSmall.draw(width, height);
    }
    Canvas canvas = new Canvas(width, height);
    List<String> texts = question.lines();
    boolean titled = !question.title().isEmpty();
    String title = titled ? question.title() : texts.get(0);
    canvas.put(2, 0, Wrap.cut(title, width - 4), Ink.STRONG);
    canvas.row(0, 1, width, '─', Ink.PLAIN);
    canvas.row(0, height - 2, width, '─', Ink.PLAIN);
    List<Line> lines = new ArrayList<>();
    int room = height - 6;
    if (titled) {
      texts.forEach(text -> lines.addAll(Line.wrapped(Printable.of(text), width - 4)));
      lines.addAll(List.of(Line.BLANK, Line.heading(question.asks())));
    } else {
      List<String> below =
          texts.stream().skip(1).flatMap(text -> Wrap.lines(text, width - 4).stream()).toList();
      canvas.paste(2, height - 3 - below.size(), Canvas.of(below, width - 4, Ink.PLAIN));
      room -= below.size();
    }
    lines.addAll(listed(width - 4));
    int marked = 0;
    for (int i = 0; i < lines.size(); i++) {
      marked = lines.get(i).lead().startsWith("►") ? i : marked;
    }
    int from = Math.max(0, Math.min(marked + BELOW - room, lines.size() - room));
    Line.draw(canvas, 2, 2, lines, from, room);
    if (options().isEmpty()) {
      CardView.field(canvas, Math.min(3 + lines.size(), height - 4), field, false, width - 10);
    }
    List<String> said = message.isEmpty() ? List.of() : Wrap.lines(message, width - 6);
    for (int i = 0; i < said.size(); i++) {
      int row = height - 2 - said.size() + i;
      canvas.row(0, row, width, ' ', Ink.PLAIN);
      canvas.put(2, row, (i == 0 ? "! " : "  ") + said.get(i), Ink.STRONG);
    }
    Foot.keys(canvas, height - 1, hints(), width - 4);
    return canvas;
  }

  private List<KeyHints.Hint> hints() {
    return options().isEmpty()
        ? List.of(
            new KeyHints.Hint("Enter", "go on"),
            new KeyHints.Hint("Esc", "back"),
            new KeyHints.Hint("F10", "close"))
        : List.of(
            new KeyHints.Hint("1-9 ↑ ↓", "mark"),
            new KeyHints.Hint("Enter", "go"),
            new KeyHints.Hint("q", "close"));
  }

  private List<Line> listed(int width) {
    List<Line> out = new ArrayList<>();
    out.add(Line.BLANK);
    String group = "";
    for (int i = 0; i < options().size(); i++) {
      Question.Option option = options().get(i);
      if (!option.group().equals(group)) {
        group = option.group();
        out.add(Line.heading(group));
        out.add(Line.BLANK);
      }
      boolean on = i == at;
      String lead = (on ? "►" : " ") + String.format("%2d ", i + 1);
      String label = Wrap.cut(option.label(), width - 5);
      out.add(new Line(lead, Ink.STRONG, 4, " " + label + " ", on ? Ink.NOW : Ink.STRONG));
      List<String> details =
          option.detail().isEmpty()
              ? List.of()
              : Wrap.lines(option.detail(), Math.min(width - 5, 90));
      for (String line : details) {
        out.add(new Line("", Ink.PLAIN, 5, line, Ink.PLAIN));
      }
      out.add(Line.BLANK);
    }
    return out;
  }
}
