package quarterturn.screen.state;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/** Handles keys at a rod turn: the turn, then how far it went and how it felt. */
public final class Turns {
  /** The part of a turn below which a slip of the pen is likelier. */
  private static final double LEAST = 1 / 32.0;

  private static final String BACK =
      "To take the last turn back instead, press z again.";

  private Turns() {}

  static Next key(Model model, Prompt.TurnRod turn, Key key) {
    return model.draft() instanceof Draft.Made made
        ? made(model, turn, made, key)
        : turning(model, turn, key);
  }

  private static Next turning(Model model, Prompt.TurnRod turn, Key key) {
    if (key == Key.Named.ENTER) {
      return model.more() ? Update.onward(model) : Next.show(model.with(Draft.Made.NOTHING));
    }
    if (Update.isLetter(key, 'z') && turn.canUndo()) {
      return model.draft().equals(new Draft.Turning(true))
          ? Next.send(model, new Answer.Undo())
          : Next.show(model.with(new Draft.Turning(true)).saying(BACK));
    }
    return Update.onlyHint(model, key, "Turn first; then press Enter to say how it went.");
  }

  private static Next made(Model model, Prompt.TurnRod turn, Draft.Made made, Key key) {
    if (key == Key.Named.ESC) {
      return Next.show(model.with(new Draft.Turning()));
    }
    if (key == Key.Named.ENTER) {
      return given(model, turn, made);
    }
    boolean marks = key == Key.Named.UP || key == Key.Named.DOWN;
    boolean turns = key == Key.Named.TAB || key == Key.Named.BACK_TAB;
    return Next.show(
        model.with(
            new Draft.Made(
                marks ? Picks.moved(made.feel(), Feel.values().length, key) : made.feel(),
                made.field().with(key),
                turns != made.otherWay(),
                null)));
  }

  private static Next given(Model model, Prompt.TurnRod asked, Draft.Made made) {
    if (made.feel() < 0) {
      return Next.show(model.saying("Mark how it felt with ↑ or ↓, then Enter."));
    }
    Feel feel = Feel.values()[made.feel()];
    Turn turned;
    try {
      turned = turned(asked, made);
    } catch (NotUnderstoodException refused) {
      // A sign to stop counts, whatever else is wrong; any other feel is refused.
      return Next.send(model, new Answer.Felt(feel, String.valueOf(refused.getMessage())));
    }
    String doubt = doubt(asked, turned);
    String text = made.field().text();
    if (doubt != null && !text.equals(made.sure())) {
      return Next.show(
          model
              .with(new Draft.Made(made.feel(), made.field(), made.otherWay(), text))
              .saying(doubt + " If it is so, press Enter again."));
    }
    return Next.send(model, new Answer.Turned(turned, feel));
  }

  /** A turn as it would be typed: "1/8". */
  public static String typedForm(Turn turn) {
    String words = turn.size().toString().replaceAll(" turns?$", "");
    return words.matches("\\d+(/\\d+)?|\\d+\\.\\d+") ? words : Decimals.plain(turn.size().turns());
  }

  /**
   * The turn that a draft tells of; plus tightens.
   *
   * @throws NotUnderstoodException with the amounts that may be typed
   */
  public static Turn turned(Prompt.TurnRod asked, Draft.Made made) {
    if (made.field().blank()) {
      throw new NotUnderstoodException(
          "Type how far it turned, for example 1/8; 0 if it did not move.");
    }
    Turn typed = Turn.parse(made.field().text());
    if (typed.turns() < 0) {
      throw new NotUnderstoodException(
          "Type it without a sign; Tab says that it was the other way.");
    }
    boolean tightened = (asked.turn().turns() > 0) != made.otherWay();
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
    double size = turned.size().turns();
    if (size > 0 && size < LEAST) {
      return "That is hardly a turn: " + Decimals.print(turned.size().degrees(), 0) + " degrees.";
    }
    boolean other = turned.turns() * asked.turn().turns() < 0;
    return other ? "That is the other way than asked." : null;
  }
}
