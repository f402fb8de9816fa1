package quarterturn.screen.state;

import java.util.List;
import quarterturn.procedure.condition.Role;
import quarterturn.screen.terminal.Key;

/** Handles keys while a technician types a line of named readings and answers. */
public final class NamingKeys {
  private NamingKeys() {}

  static Next key(Model model, Draft.Naming draft, Key key) {
    if (key == Key.Named.ESC) {
      return Next.show(model.with(Draft.of(model.prompt())));
    }
    if (key == Key.Named.TAB) {
      return new Next(model, new Effect.Complete(draft.field()));
    }
    if (key != Key.Named.ENTER) {
      return Next.show(model.with(new Draft.Naming(draft.field().with(key))));
    }
    return draft.field().blank()
        ? Next.show(model.saying("Type for example relief .42 low .38 high; rh 48"))
        : new Next(
            model,
            new Effect.Named(
                draft.field().text(), "Begin with the name of a reading or of a question."));
  }

  /** Whether the person at this bench may type such lines. */
  public static boolean may(Model model) {
    return model.overview().role() == Role.TECHNICIAN && !model.prompt().ended();
  }

  /** The field with its last word completed by the letters that all matching words share. */
  public static Field completed(Field field, List<String> words) {
    String before = field.text().substring(0, field.at());
    int from = Math.max(before.lastIndexOf(' '), before.lastIndexOf(';')) + 1;
    String begun = before.substring(from);
    List<String> fits =
        begun.isEmpty()
            ? List.of()
            : words.stream().filter(word -> word.startsWith(begun)).distinct().toList();
    if (fits.isEmpty()) {
      return field;
    }
    String common = fits.get(0);
    for (String fit : fits) {
      while (!fit.startsWith(common)) {
        common = common.substring(0, common.length() - 1);
      }
    }
    String end = fits.size() == 1 ? common + " " : common;
    return new Field(
        before.substring(0, from) + end + field.text().substring(field.at()), from + end.length());
  }
}
