package quarterturn.screen;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.page.KeyHints;
import quarterturn.screen.page.Pane;
import quarterturn.screen.page.TooSmall;
import quarterturn.screen.state.Field;
import quarterturn.screen.state.Picks;
import quarterturn.screen.state.Scrolling;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Question;
import quarterturn.unit.Pasted;

/**
 * The state of a question or a message on the full screen, with a list of options to mark or a
 * field to type in.
 *
 * @param at index of the marked option
 * @param typed whether it was marked by its number, which a further digit may go on with
 * @param scroll the line on top
 * @param page lines that a key for a page scrolls
 * @param byHand whether the list was scrolled since an option was marked
 * @param message a hint; empty for none
 */
record QuestionView(
    Question question,
    int at,
    boolean typed,
    int scroll,
    int page,
    boolean byHand,
    Field field,
    String message) {
  private static final Key LEAVE = new Key.Function(10);

  /** A view with the option marked that the question marks. */
  QuestionView(Question question) {
    this(
        question,
        question instanceof Question.Choose choose ? choose.marked() : 0,
        false,
        0,
        1,
        false,
        Field.EMPTY,
        "");
  }

  /** The same place in a question that tells something else now: its option stays marked. */
  QuestionView of(Question now) {
    List<String> names = names(now);
    int same = at < options().size() ? names.indexOf(options().get(at).name()) : -1;
    int mark = same < 0 ? new QuestionView(now).at() : same;
    return new QuestionView(now, mark, false, scroll, page, byHand, field, message);
  }

  private static List<String> names(Question question) {
    return question instanceof Question.Choose choose
        ? choose.options().stream().map(Question.Option::name).toList()
        : List.of();
  }

  QuestionView saying(String said) {
    return new QuestionView(question, at, typed, scroll, page, byHand, field, said);
  }

  private QuestionView scrolled(int lines) {
    int to = Math.max(0, scroll + lines);
    return new QuestionView(question, at, typed, to, page, true, field, "");
  }

  private QuestionView typing(Field now) {
    return new QuestionView(question, at, typed, scroll, page, byHand, now, "");
  }

  List<Question.Option> options() {
    return question instanceof Question.Choose choose ? choose.options() : List.of();
  }

  /** Whether a line is typed as the answer. */
  boolean takesWords() {
    return question instanceof Question.Asked && options().isEmpty();
  }

  /** The view with the line on top that is on top at this size. */
  QuestionView settled(int width, int height) {
    if (TooSmall.is(width, height)) {
      return this;
    }
    Pane pane = QuestionPage.pane(this, width, height);
    int lines = Math.max(1, pane.shown() - 1);
    return new QuestionView(question, at, typed, pane.from(), lines, byHand, field, message);
  }

  /** The view after a key that answers nothing. */
  QuestionView key(Key key) {
    if (key instanceof Key.Paste) {
      return takesWords()
          ? typing(field.with(key)).saying(field.refusal(key))
          : saying(Pasted.NOWHERE);
    }
    int to = Picks.moved(at, typed, options().size(), key);
    if (to != at || (Picks.digit(key) == at + 1 && !options().isEmpty())) {
      boolean digit = Picks.digit(key) >= 0;
      return new QuestionView(question, to, digit, scroll, page, false, field, "");
    }
    int lines = Scrolling.lines(key, page);
    boolean paged = key == Key.Named.PAGE_DOWN || key == Key.Named.PAGE_UP;
    if (paged || (lines != 0 && options().isEmpty())) {
      return scrolled(lines);
    }
    boolean help = Update.isLetter(key, '?') || key.equals(new Key.Function(1));
    if (takesWords() && !(help && field.blank()) && key != Key.Named.ESC) {
      return typing(field.with(key));
    }
    return saying(
        key == Key.Named.ESC
            ? "Nothing comes before this; " + leaving() + " leaves."
            : options().isEmpty()
                ? question.help()
                : help
                    ? "Keys: a number or the arrows mark a line, PgUp and PgDn scroll, Enter goes"
                        + " on, q closes."
                    : "Mark a line with its number or the arrows, then Enter.");
  }

  private String leaving() {
    return takesWords() ? "F10" : "q";
  }

  /** Whether a key leaves the question without an answer. */
  boolean leaves(Key key) {
    return key.equals(LEAVE) || (!takesWords() && Update.isLetter(key, 'q'));
  }

  /** The text that a key gives as an answer, or null where it gives none. */
  @Nullable String answer(Key key) {
    if (key == Key.Named.ENTER && !options().isEmpty()) {
      return String.valueOf(at + 1);
    }
    return Picks.answer(question, field, key);
  }

  Canvas draw(int width, int height) {
    return QuestionPage.draw(this, width, height);
  }

  List<KeyHints.Hint> hints() {
    List<KeyHints.Hint> hints = new ArrayList<>();
    if (!options().isEmpty()) {
      hints.add(new KeyHints.Hint("1-" + options().size() + " ↑ ↓", "mark"));
      hints.add(new KeyHints.Hint("Enter", "go"));
      if (!question.title().isEmpty()) {
        hints.add(new KeyHints.Hint("Esc", "back"));
      }
      hints.add(new KeyHints.Hint("q", "close"));
      return hints;
    }
    hints.add(new KeyHints.Hint("Enter", "go on"));
    if (!takesWords()) {
      hints.add(new KeyHints.Hint("↑ ↓", "scroll"));
    }
    hints.add(new KeyHints.Hint("Esc", "back"));
    hints.add(new KeyHints.Hint(leaving(), "close"));
    return hints;
  }
}
