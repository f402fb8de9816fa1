package quarterturn.script;

import java.util.Arrays;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.NotUnderstood;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/** Reads one line of a script as an answer to the prompt at hand. */
final class ReplyReader {
  private ReplyReader() {}

  static ScriptReply read(String line, Prompt prompt) throws BadAnswer {
    Fields fields = Fields.parse(line);
    String word = fields.isText("answer") ? fields.text("answer") : "";
    boolean option = prompt instanceof Prompt.Choose choose && chosen(choose, word) != null;
    if (!option && (word.equals("quit") || word.equals("correct"))) {
      fields.only(Set.of("answer"));
      return new ScriptReply(word.equals("quit") ? null : new Answer.Correct(), fields.at());
    }
    try {
      return new ScriptReply(answer(fields, word, prompt), fields.at());
    } catch (NotUnderstood e) {
      throw new BadAnswer(String.valueOf(e.getMessage()));
    }
  }

  private static Answer answer(Fields fields, String word, Prompt prompt) throws BadAnswer {
    if (prompt instanceof Prompt.Measure measure) {
      return ReadingFields.read(fields, measure);
    }
    if (prompt instanceof Prompt.TurnRod turn) {
      return turn(fields, word, turn);
    }
    if (prompt instanceof Prompt.Choose choose) {
      return choice(fields, choose);
    }
    if (prompt instanceof Prompt.Wait) {
      return waited(fields);
    }
    if (prompt instanceof Prompt.Write) {
      fields.only(Set.of("answer"));
      return new Answer.Wrote(fields.text("answer"));
    }
    fields.only(Set.of("answer"));
    if (!fields.isTrue("answer")) {
      throw new BadAnswer("\"answer\" must be true");
    }
    return new Answer.Confirmed();
  }

  private static Answer choice(Fields fields, Prompt.Choose choose) throws BadAnswer {
    fields.only(Set.of("answer"));
    String typed = fields.text("answer");
    Prompt.Option option = chosen(choose, typed);
    if (option == null) {
      throw new BadAnswer("\"" + Fields.shown(typed) + "\" is not one of the options");
    }
    return new Answer.Chose(option.id());
  }

  private static Prompt.@Nullable Option chosen(Prompt.Choose choose, String id) {
    return choose.options().stream().filter(o -> o.id().equals(id)).findFirst().orElse(null);
  }

  private static Answer waited(Fields fields) throws BadAnswer {
    fields.only(Set.of("answer", "reason"));
    if (!fields.text("answer").equals("waited")) {
      throw new BadAnswer("\"answer\" must be \"waited\"");
    }
    if (!fields.has("reason")) {
      return new Answer.Waited(null);
    }
    String reason = Printable.of(fields.text("reason")).strip();
    if (reason.isEmpty()) {
      throw new BadAnswer("\"reason\" must say why");
    }
    return new Answer.Waited(reason);
  }

  private static Answer turn(Fields fields, String word, Prompt.TurnRod prompt) throws BadAnswer {
    if (fields.has("answer")) {
      fields.only(Set.of("answer"));
      if (!word.equals("undo")) {
        throw new BadAnswer("a turn has no such answer");
      }
      return new Answer.Undo();
    }
    fields.only(Set.of("turned", "feel", "way"));
    double amount = fields.number("turned");
    String felt = fields.text("feel");
    Feel feel =
        Arrays.stream(Feel.values())
            .filter(f -> f.word().equals(felt))
            .findFirst()
            .orElseThrow(() -> new BadAnswer("\"feel\" must be one of " + Takes.feels()));
    return new Answer.Turned(new Turn(signed(amount, fields, prompt)), feel);
  }

  /** The amount with its sign: plus tightens. */
  private static double signed(double amount, Fields fields, Prompt.TurnRod prompt)
      throws BadAnswer {
    boolean loosen = prompt.turn().turns() < 0;
    if (fields.has("way")) {
      String way = fields.text("way");
      if (!way.equals("tighten") && !way.equals("loosen")) {
        throw new BadAnswer("\"way\" must be \"tighten\" or \"loosen\"");
      }
      if (amount < 0) {
        throw new BadAnswer("beside \"way\", \"turned\" is an amount without a sign");
      }
      loosen = way.equals("loosen");
    }
    // A minus always means loosened; a plain amount goes the way that was asked for.
    double size = Math.abs(amount);
    return size == 0 ? 0 : loosen || amount < 0 ? -size : size;
  }
}
