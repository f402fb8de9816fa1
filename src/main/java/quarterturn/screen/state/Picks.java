package quarterturn.screen.state;

import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.session.Question;

/** Handles keys while an option is chosen. */
public final class Picks {
  private Picks() {}

  static Next key(Model model, Prompt.Choose choose, Key key) {
    Draft.Picking draft = (Draft.Picking) model.draft();
    int now = draft.at();
    int to = moved(now, draft.typed(), choose.options().size(), key);
    if (to != now || (now >= 0 && digit(key) == now + 1)) {
      return Next.show(model.with(new Draft.Picking(to, digit(key) >= 0)));
    }
    if (key == Key.Named.ENTER && now >= 0) {
      return Next.send(model, new Answer.Chose(choose.options().get(now).id()));
    }
    if (key == Key.Named.ENTER && model.more()) {
      return Update.onward(model);
    }
    if (key == Key.Named.ESC && now >= 0) {
      return Next.show(model.with(new Draft.Picking(-1)));
    }
    return Update.onlyHint(model, key, "Mark an answer with its number or the arrows, then Enter.");
  }

  /** The text that a key gives to a question: what was typed with Enter, or yes or no; or null. */
  public static @Nullable String answer(@Nullable Question asked, Field field, Key key) {
    if (key == Key.Named.ENTER) {
      return field.text().strip();
    }
    boolean letter = asked instanceof Question.Choose choose && choose.lettered() && field.blank();
    return !letter
        ? null
        : Update.isLetter(key, 'y') ? "yes" : Update.isLetter(key, 'n') ? "no" : null;
  }

  /** The index that a key marks: a digit's own, or the neighbour for an arrow. */
  public static int moved(int now, int size, Key key) {
    return moved(now, false, size, key);
  }

  /**
   * The index that a key marks, where a number may have two digits.
   *
   * @param typed whether what is marked was marked by a digit, which this one may go on with
   */
  public static int moved(int now, boolean typed, int size, Key key) {
    int digit = digit(key);
    if (digit >= 0) {
      int longer = typed ? 10 * (now + 1) + digit : 0;
      int number = longer > 0 && longer <= size ? longer : digit;
      return number > 0 && number <= size ? number - 1 : now;
    }
    if (key == Key.Named.DOWN) {
      return Math.min(size - 1, now + 1);
    }
    if (key == Key.Named.UP) {
      return now < 0 ? size - 1 : Math.max(0, now - 1);
    }
    return now;
  }

  /** The digit that a key types, or -1. */
  public static int digit(Key key) {
    return key instanceof Key.Typed typed ? Character.digit(typed.codePoint(), 10) : -1;
  }
}
