package quarterturn.screen.state;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/** Handles keys at a rod turn: the turn, how it felt, then how far it went. */
public final class Turns {
  private Turns() {}

  static Next key(Model model, Prompt.TurnRod turn, Key key) {
    Draft draft = model.draft();
    if (draft instanceof Draft.Feeling feeling) {
      return feeling(model, turn, feeling, key);
    }
    return draft instanceof Draft.Amount amount
        ? amount(model, turn, amount, key)
        : turning(model, turn, key);
  }

  private static Next turning(Model model, Prompt.TurnRod turn, Key key) {
    if (key == Key.Named.ENTER) {
      return Next.show(model.with(new Draft.Feeling(-1)));
    }
    if (Update.isLetter(key, 'z') && turn.canUndo()) {
      return Next.send(model, new Answer.Undo());
    }
    return Update.onlyHint(model, key, "Turn first; then press Enter to say how it went.");
  }

  private static Next feeling(Model model, Prompt.TurnRod turn, Draft.Feeling feeling, Key key) {
    Feel[] feels = Feel.values();
    int to = Picks.moved(feeling.at(), feels.length, key);
    if (to != feeling.at()) {
      return Next.show(model.with(new Draft.Feeling(to)));
    }
    if (key == Key.Named.ENTER && to >= 0) {
      return Next.show(
          model.with(new Draft.Amount(feels[to], Field.of(preset(feels[to], turn)), false, null)));
    }
    if (key == Key.Named.ESC) {
      return Next.show(model.with(new Draft.Turning()));
    }
    return Next.show(model.saying("Mark how it felt with its number or the arrows, then Enter."));
  }

  /** The amount asked for as text; empty where the feel says that it may not have been reached. */
  private static String preset(Feel feel, Prompt.TurnRod turn) {
    return feel == Feel.JAMMED || feel == Feel.SLIPPED ? "" : typedForm(turn.turn());
  }

  /** A turn as it would be typed: "1/8". */
  public static String typedForm(Turn turn) {
    String words = turn.size().toString().replaceAll(" turns?$", "");
    return words.matches("\\d+(/\\d+)?|\\d+\\.\\d+") ? words : Decimals.plain(turn.size().turns());
  }

  private static Next amount(Model model, Prompt.TurnRod turn, Draft.Amount amount, Key key) {
    if (key == Key.Named.ESC) {
      return Next.show(
          model.with(new Draft.Feeling(List.of(Feel.values()).indexOf(amount.feel()))));
    }
    if (key == Key.Named.TAB || key == Key.Named.BACK_TAB) {
      return Next.show(
          model.with(new Draft.Amount(amount.feel(), amount.field(), !amount.otherWay(), null)));
    }
    if (key != Key.Named.ENTER) {
      return Next.show(
          model.with(
              new Draft.Amount(amount.feel(), amount.field().with(key), amount.otherWay(), null)));
    }
    try {
      return given(model, turn, amount);
    } catch (NotUnderstoodException refused) {
      return Next.show(model.saying(String.valueOf(refused.getMessage())));
    }
  }

  private static Next given(Model model, Prompt.TurnRod asked, Draft.Amount amount) {
    Turn turned = turned(asked, amount);
    String doubt = doubt(asked, turned);
    String text = amount.field().text();
    if (doubt != null && !text.equals(amount.sure())) {
      return Next.show(
          model
              .with(new Draft.Amount(amount.feel(), amount.field(), amount.otherWay(), text))
              .saying(doubt + " If it is so, press Enter again."));
    }
    return Next.send(model, new Answer.Turned(turned, amount.feel()));
  }

  /**
   * The turn that a draft tells of; plus tightens.
   *
   * @throws NotUnderstoodException with the amounts that may be typed
   */
  public static Turn turned(Prompt.TurnRod asked, Draft.Amount amount) {
    if (amount.field().blank()) {
      throw new NotUnderstoodException(
          "Type how far it turned, for example 1/8; 0 if it did not move.");
    }
    Turn typed = Turn.parse(amount.field().text());
    if (typed.turns() < 0) {
      throw new NotUnderstoodException(
          "Type it without a sign; Tab says that it was the other way.");
    }
    boolean tightened = (asked.turn().turns() > 0) != amount.otherWay();
    return tightened ? typed : typed.opposite();
  }

  /** A question about a turn that differs oddly from the one asked for, or null. */
  private static @Nullable String doubt(Prompt.TurnRod asked, Turn turned) {
    if (!asked.limit().size().atLeast(turned.size())) {
      return "That is "
          + turned
          + " ("
          + Decimals.print(turned.size().degrees(), 0)
          + " degrees), more than the limit.";
    }
    boolean other = turned.turns() * asked.turn().turns() < 0;
    return other ? "That is the other way than asked." : null;
  }
}
