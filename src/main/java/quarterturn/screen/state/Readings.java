package quarterturn.screen.state;

import java.util.Locale;
import java.util.Set;
import quarterturn.procedure.kind.Quantity;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.BracketParser;
import quarterturn.unit.Decimals;
import quarterturn.unit.Digits;
import quarterturn.unit.NotUnderstoodException;

/** Handles keys while a reading is typed, and reads the typed text. */
public final class Readings {
  /** No reading is longer, in any words. */
  private static final int LONGEST = 200;

  private static final Set<String> CANNOT =
      Set.of("c", "cannot", "can't", "cant", "can't measure", "cannot measure", "cant measure");

  private Readings() {}

  static Next key(Model model, Prompt.Measure measure, Key key) {
    Draft.Reading draft = (Draft.Reading) model.draft();
    if (key == Key.Named.ESC) {
      return draft.typing()
          ? Next.show(
              model
                  .with(new Draft.Reading(draft.field(), false))
                  .saying("Letters are commands now. Enter goes back to the field."))
          : Update.onlyHint(model, key, "Enter goes back to the field.");
    }
    if (!draft.typing()) {
      return outside(model, draft, key);
    }
    if (key == Key.Named.TAB && NamingKeys.may(model)) {
      return new Next(model, new Effect.Complete(draft.field()));
    }
    if (key != Key.Named.ENTER) {
      return Next.show(model.with(new Draft.Reading(draft.field().with(key), true)));
    }
    try {
      return Next.send(model, answer(draft.field().text(), measure));
    } catch (NotUnderstoodException refused) {
      String why = String.valueOf(refused.getMessage());
      return NamingKeys.may(model)
          ? new Next(model, new Effect.Named(draft.field().text(), why))
          : Next.show(model.saying(why));
    }
  }

  private static Next outside(Model model, Draft.Reading draft, Key key) {
    boolean digit =
        key instanceof Key.Typed typed
            && (Character.isDigit(typed.codePoint()) || typed.codePoint() == '.');
    if (digit) {
      return Next.show(model.with(new Draft.Reading(draft.field().with(key), true)));
    }
    if (key == Key.Named.ENTER || key == Key.Named.TAB) {
      return Next.show(model.with(new Draft.Reading(draft.field(), true)));
    }
    return Update.onlyHint(model, key, "Enter goes back to the field.");
  }

  /**
   * The answer that typed text stands for.
   *
   * @throws NotUnderstoodException with the readings that may be typed
   */
  static Answer answer(String typed, Prompt.Measure measure) {
    String text = plain(typed);
    if (text.isEmpty()) {
      throw new NotUnderstoodException(
          measure.quantity().bracket()
              ? "Type what the gauges showed, for example: 0.30 passes 0.35 lifts"
              : "Type the number first, for example " + measure.quantity().example());
    }
    if (CANNOT.contains(text)) {
      return new Answer.CannotMeasure();
    }
    return measure.quantity().bracket()
        ? new Answer.Measured(BracketParser.parse(text, measure.step()))
        : new Answer.Value(measure.quantity().value(text));
  }

  private static String plain(String typed) {
    return Digits.unended(typed).toLowerCase(Locale.ROOT).replace('’', '\'');
  }

  /**
   * The reading that the text stands for so far: "read as 0.30 to 0.35 mm", or what may be typed.
   */
  public static String readAs(String typed, Prompt.Measure measure) {
    if (typed.length() > LONGEST) {
      return "not a reading";
    }
    String text = plain(typed);
    if (text.isEmpty()) {
      return "";
    }
    if (CANNOT.contains(text)) {
      return "read as: can't be measured here";
    }
    try {
      Quantity quantity = measure.quantity();
      return quantity.bracket()
          ? "read as: " + BracketParser.parse(text, measure.step())
          : "read as: " + Decimals.plain(quantity.value(text)) + " " + quantity.unit();
    } catch (NotUnderstoodException notYet) {
      return "not a reading yet";
    }
  }
}
