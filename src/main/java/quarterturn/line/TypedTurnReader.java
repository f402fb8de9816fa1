package quarterturn.line;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.procedure.condition.Feel;
import quarterturn.quick.Begun;
import quarterturn.report.TurnWords;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Digits;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/** Reads how far the rod was really turned, and how that felt. */
final class TypedTurnReader {
  private static final Pattern WAY =
      Pattern.compile("(other way|other|wrong way|tightened|tighten|loosened|loosen)\\s*(.*)");

  private TypedTurnReader() {}

  static Reply read(String typed, Prompt.TurnRod prompt) {
    String word = Digits.unended(typed);
    if (word.equals("undo")) {
      return prompt.canUndo()
          ? Reply.Give.one(new Answer.Undo())
          : new Reply.Bad("There is no turn to take back here. " + AnswerHelp.of(prompt));
    }
    int last = word.lastIndexOf(' ') + 1;
    String much = word.substring(0, last).strip();
    Feel feel = much.isEmpty() && word.matches("\\d") ? null : Begun.feel(word.substring(last));
    if (feel == null) {
      throw new NotUnderstoodException(AnswerHelp.of(prompt));
    }
    try {
      return Reply.Give.one(new Answer.Turned(amount(much, prompt), feel));
    } catch (NotUnderstoodException refused) {
      // A sign to stop counts, whatever else is wrong; the engine refuses any other.
      return Reply.Give.one(new Answer.Felt(feel, String.valueOf(refused.getMessage())));
    }
  }

  private static Turn amount(String word, Prompt.TurnRod prompt) {
    if (word.isEmpty()) {
      throw new NotUnderstoodException(AnswerHelp.of(prompt));
    }
    boolean tighten = prompt.turn().turns() > 0;
    Matcher way = WAY.matcher(word);
    String much = word;
    if (way.matches()) {
      String which = way.group(1);
      much = way.group(2);
      tighten = which.startsWith("tighten") || (!which.startsWith("loosen") && !tighten);
    }
    Turn size = size(much, prompt);
    return tighten ? size : size.opposite();
  }

  private static Turn size(String much, Prompt.TurnRod prompt) {
    Turn size;
    try {
      size = Turn.parse(much);
    } catch (NotUnderstoodException e) {
      throw new NotUnderstoodException(
          "\"" + TypedReplyReader.shortened(much) + "\" is no amount. " + AnswerHelp.of(prompt));
    }
    if (much.startsWith("-") || much.startsWith("+")) {
      throw new NotUnderstoodException(
          "type the amount without a sign; if it was turned the wrong way, type other way "
              + size.size());
    }
    return size;
  }

  /** A turn and its feel, to repeat to the person. */
  static String said(Answer.Turned turned) {
    return TurnWords.done(turned.turn()) + ", " + turned.feel().word();
  }
}
