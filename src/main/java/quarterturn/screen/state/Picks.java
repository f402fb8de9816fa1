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
    int now = ((Draft.Picking) model.draft()).at();
    int to = moved(now, choose.options().size(), key);
    if (to != now) {
      return Next.show(model.with(new Draft.Picking(to)));
    }
    if (key == Key.Named.ENTER && now >= 0) {
      return Next.send(model, new Answer.Chose(choose.options().get(now).id()));
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
    if (key instanceof Key.Typed typed) {
      int number = Character.digit(typed.codePoint(), 10) - 1;
      return number >= 0 && number < size ? number : now;
    }
    if (key == Key.Named.DOWN) {
      return Math.min(size - 1, now + 1);
    }
    if (key == Key.Named.UP) {
      return now < 0 ? size - 1 : Math.max(0, now - 1);
    }
    return now;
  }
}
