package quarterturn.screen.state;

import quarterturn.screen.terminal.Key;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;

/** Handles keys during a wait. */
public final class Waits {
  private Waits() {}

  static Next key(Model model, Prompt.Wait wait, Key key) {
    if (model.draft() instanceof Draft.Lifting lifting) {
      return lifting(model, lifting, key);
    }
    boolean over = over(model, wait);
    if (key == Key.Named.ENTER && over) {
      return Next.send(model, new Answer.Waited(null));
    }
    if (Update.isLetter(key, 'e') && wait.mayLift() && !over) {
      return Next.show(model.with(new Draft.Lifting(Field.EMPTY)));
    }
    return Update.onlyHint(
        model,
        key,
        over ? "Press Enter to go on." : "Not over yet. It goes on waiting when you leave with q.");
  }

  public static boolean over(Model model, Prompt.Wait wait) {
    return !model.now().isBefore(wait.until());
  }

  private static Next lifting(Model model, Draft.Lifting lifting, Key key) {
    if (key == Key.Named.ESC) {
      return Next.show(model.with(new Draft.Simple()));
    }
    if (key != Key.Named.ENTER) {
      return Next.show(model.with(new Draft.Lifting(lifting.field().with(key))));
    }
    return lifting.field().blank()
        ? Next.show(model.saying("Type the reason first; it goes into the record."))
        : Next.send(model, new Answer.Waited(lifting.field().text().strip()));
  }
}
