package quarterturn.script;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/** Reads one line of a script as an answer to the prompt at hand. */
final class ScriptReplyReader {
  private ScriptReplyReader() {}

  static ScriptReply read(String line, Prompt prompt) {
    ReplyFields fields = ReplyFields.parse(line);
    String word = fields.word("answer");
    boolean option = prompt instanceof Prompt.Choose choose && chosen(choose, word) != null;
    if (!option && (word.equals("quit") || word.equals("correct"))) {
      fields.only("answer");
      return new ScriptReply(word.equals("quit") ? null : new Answer.Correct(), fields.at());
    }
    boolean differs = fields.has("differs");
    return new ScriptReply(
        differs ? differs(fields, word) : answer(fields, word, prompt), fields.at());
  }

  /** What is not as recorded of how the instrument is made, at any prompt. */
  private static Answer differs(ReplyFields fields, String answer) {
    String said = fields.only("differs", "answer").text("differs");
    return Arrays.stream(Recorded.values())
        .filter(what -> what.word().equals(said))
        .findFirst()
        .map(what -> new Answer.Differs(what, answer))
        .orElseThrow(
            () -> new BadAnswerException("\"" + ReplyFields.shown(said) + "\" is not on record"));
  }

  private static Answer answer(ReplyFields fields, String word, Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> confirmed(fields),
            caution -> confirmed(fields),
            choose -> choice(fields, choose),
            write -> new Answer.Wrote(fields.only("answer").text("answer")),
            measure -> ReadingFields.read(fields, measure),
            turn -> turn(fields, word, turn),
            wait -> waited(fields),
            done -> confirmed(fields),
            over -> confirmed(fields)));
  }

  private static Answer confirmed(ReplyFields fields) {
    if (!fields.only("answer").isTrue("answer")) {
      throw new BadAnswerException("\"answer\" must be true");
    }
    return new Answer.Confirmed();
  }

  private static Answer choice(ReplyFields fields, Prompt.Choose choose) {
    String typed = fields.only("answer").text("answer");
    Prompt.Option option = chosen(choose, typed);
    if (option == null) {
      throw new BadAnswerException(
          "\"" + ReplyFields.shown(typed) + "\" is not one of the options");
    }
    return new Answer.Chose(option.id());
  }

  /** The option of an id, or of a number as in the other faces; or null. */
  private static Prompt.@Nullable Option chosen(Prompt.Choose choose, String typed) {
    List<Prompt.Option> options = choose.options();
    boolean number = typed.matches("[1-9]\\d?") && Integer.parseInt(typed) <= options.size();
    return options.stream()
        .filter(option -> option.id().equals(typed))
        .findFirst()
        .orElse(number ? options.get(Integer.parseInt(typed) - 1) : null);
  }

  private static Answer waited(ReplyFields fields) {
    if (!fields.only("answer", "reason").text("answer").equals("waited")) {
      throw new BadAnswerException("\"answer\" must be \"waited\"");
    }
    if (!fields.has("reason")) {
      return new Answer.Waited(null);
    }
    String reason = Printable.of(fields.text("reason")).strip();
    if (reason.isEmpty()) {
      throw new BadAnswerException("\"reason\" must say why");
    }
    return new Answer.Waited(reason);
  }

  private static Answer turn(ReplyFields fields, String word, Prompt.TurnRod prompt) {
    if (fields.has("answer")) {
      fields.only("answer");
      if (!word.equals("undo")) {
        throw new BadAnswerException("a turn has no such answer");
      }
      return new Answer.Undo();
    }
    fields.only("turned", "feel", "way");
    String felt = fields.text("feel");
    Feel feel =
        Arrays.stream(Feel.values())
            .filter(f -> f.word().equals(felt))
            .findFirst()
            .orElseThrow(() -> new BadAnswerException("\"feel\" must be one of " + Takes.feels()));
    return fields.has("turned")
        ? new Answer.Turned(new Turn(signed(fields.number("turned"), fields, prompt)), feel)
        : new Answer.Felt(feel, "beside this feel, \"turned\" must say how far");
  }

  /** The amount of a turn with its sign; plus tightens. */
  private static double signed(double amount, ReplyFields fields, Prompt.TurnRod prompt) {
    boolean loosen = prompt.turn().turns() < 0;
    if (fields.has("way")) {
      String way = fields.text("way");
      if (!way.equals("tighten") && !way.equals("loosen")) {
        throw new BadAnswerException("\"way\" must be \"tighten\" or \"loosen\"");
      }
      if (amount < 0) {
        throw new BadAnswerException("beside \"way\", \"turned\" is an amount without a sign");
      }
      loosen = way.equals("loosen");
    }
    // A minus always means loosened; a plain amount goes the way that was asked for.
    double size = Math.abs(amount);
    return size == 0 ? 0 : loosen || amount < 0 ? -size : size;
  }
}
