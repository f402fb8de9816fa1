package quarterturn.screen.state;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.quick.Begun;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;
import quarterturn.unit.Digits;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/** Handles keys at a rod turn: the turn, then how far it went and how it felt. */
public final class Turns {
  /** The part of a turn below which a slip of the pen is likelier. */
  private static final double LEAST = 1 / 32.0;

  private static final String BACK = "To take the last turn back instead, press z again.";

  private Turns() {}

  static Next key(Model model, Prompt.TurnRod turn, Key key) {
    return model.draft() instanceof Draft.Made made
        ? made(model, turn, made, key)
        : turning(model, turn, key);
  }

  private static Next turning(Model model, Prompt.TurnRod turn, Key key) {
    if (key == Key.Named.ENTER && model.more()) {
      return Update.onward(model);
    }
    if (model.draft() instanceof Draft.Before) {
      return key == Key.Named.ENTER
          ? Next.show(model.with(new Draft.Turning()).scrolled(-model.scroll()))
          : Update.isLetter(key, 'n')
              ? Next.show(model.with(Draft.Made.NOTHING))
              : Update.onlyHint(model, key, "Do this first; then press Enter.");
    }
    if (key == Key.Named.ENTER) {
      return Next.show(model.with(Draft.Made.NOTHING));
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
    // A feel typed behind the amount is marked; what is marked by hand replaces it.
    Feel named = feel(made.field());
    Field field = marks && named != null ? Field.of(amount(made.field())) : made.field().with(key);
    Feel names = feel(field);
    int feel = names != null ? names.ordinal() : named != null && !marks ? -1 : made.feel();
    return Next.show(
        model.with(
            new Draft.Made(
                marks ? Picks.moved(feel, Feel.values().length, key) : feel,
                field,
                turns != made.otherWay(),
                null)));
  }

  /** The feel that is typed behind an amount, as in "1/8 smooth"; or null. */
  private static @Nullable Feel feel(Field field) {
    String text = Digits.unended(field.text());
    int last = text.lastIndexOf(' ') + 1;
    return last == 0 ? null : Begun.feel(text.substring(last));
  }

  /** The typed text without the feel behind it. */
  private static String amount(Field field) {
    String text = field.text().strip();
    return feel(field) == null ? text : text.substring(0, text.lastIndexOf(' ')).strip();
  }

  private static Next given(Model model, Prompt.TurnRod asked, Draft.Made made) {
    if (made.feel() < 0) {
      return Next.show(model.saying("Mark how it felt with ↑ or ↓, then Enter."));
    }
    Feel feel = Feel.values()[made.feel()];
    List<String> doubts = new ArrayList<>();
    Answer answer;
    try {
      Turn turned = turned(asked, made);
      answer = new Answer.Turned(turned, feel);
      doubts.addAll(doubt(asked, turned));
    } catch (NotUnderstoodException refused) {
      // A sign to stop counts, whatever else is wrong; any other feel is refused.
      answer = new Answer.Felt(feel, String.valueOf(refused.getMessage()));
    }
    if (asked.stops().contains(feel)) {
      doubts.add("It ends the work on the rod.");
    }
    String text = made.field().text();
    if (doubts.isEmpty() || text.equals(made.sure())) {
      return Next.send(model, answer);
    }
    return Next.show(
        model
            .with(new Draft.Made(made.feel(), made.field(), made.otherWay(), text))
            .saying(String.join(" ", doubts) + " Enter again if it is so."));
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
    Turn typed = Turn.parse(amount(made.field()));
    if (typed.turns() < 0) {
      throw new NotUnderstoodException(
          "Type it without a sign; Tab says that it was the other way.");
    }
    boolean tightened = (asked.turn().turns() > 0) != made.otherWay();
    return tightened ? typed : typed.opposite();
  }

  /** What is odd in a turn beside the one asked for; empty for nothing. */
  private static List<String> doubt(Prompt.TurnRod asked, Turn turned) {
    if (!asked.limit().size().atLeast(turned.size())) {
      return List.of(
          "That is "
              + turned
              + " ("
              + Decimals.print(turned.size().degrees(), 0)
              + " degrees), more than the limit.");
    }
    double size = turned.size().turns();
    if (size > 0 && size < LEAST) {
      return List.of(
          "That is hardly a turn: " + Decimals.print(turned.size().degrees(), 0) + " degrees.");
    }
    boolean other = turned.turns() * asked.turn().turns() < 0;
    return other ? List.of("That is the other way than asked.") : List.of();
  }
}
