package quarterturn.line;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.quick.Begun;
import quarterturn.quick.Unnamed;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.session.Prompt.Option;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/** Reads a typed line as a command or as an answer to the prompt at hand. */
final class TypedReplyReader {
  private static final String CLOSE = "Press Enter to close.";

  private TypedReplyReader() {}

  /** Reads {@code typed} as a reply to {@code prompt}. */
  static Reply read(String typed, Prompt prompt, Instant now) {
    String text = typed.strip();
    String word = text.toLowerCase(Locale.ROOT);
    if (prompt instanceof Prompt.Choose choose) {
      // An option that is called like a command is meant first: it is what was asked.
      for (Option option : choose.options()) {
        if (option.id().equals(word) && !Begun.ROUTINE.contains(word)) {
          return Reply.Give.one(new Answer.Chose(option.id()));
        }
      }
    }
    Reply command = command(word);
    if (word.equals("undo") && !(prompt instanceof Prompt.TurnRod)) {
      command = Reply.Give.one(new Answer.Correct());
    }
    if (command != null) {
      return command;
    }
    try {
      return answer(text, word, prompt, now);
    } catch (NotUnderstoodException e) {
      return new Reply.Bad(sentence(String.valueOf(e.getMessage())));
    }
  }

  /** The command of a word, which works at every prompt, or null. */
  static @Nullable Reply command(String word) {
    return switch (word) {
      case "?", "help" -> Reply.Command.HELP;
      case "why" -> Reply.Command.WHY;
      case "next" -> Reply.Command.NEXT;
      case "log" -> Reply.Command.LOG;
      case "overview" -> Reply.Command.OVERVIEW;
      case "again" -> Reply.Command.AGAIN;
      case "quit", "exit" -> Reply.Command.QUIT;
      case "back" -> Reply.Give.one(new Answer.Correct());
      default -> null;
    };
  }

  private static Reply answer(String text, String word, Prompt prompt, Instant now) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> done(text, word, tell.enter()),
            caution -> accepted(word),
            choose -> choice(text, word, choose.options()),
            write ->
                text.isEmpty()
                    ? new Reply.Bad(AnswerHelp.of(write))
                    : Reply.Give.one(new Answer.Wrote(text)),
            measure -> reading(text, measure),
            turn -> TypedTurnReader.read(word, turn),
            wait -> waited(text, word, wait, now),
            done -> done(text, word, CLOSE),
            over -> done(text, word, CLOSE)));
  }

  private static Reply done(String text, String word, String takes) {
    return List.of("", "done", "d", "yes", "y", "ok").contains(word)
        ? Reply.Give.one(new Answer.Confirmed())
        : bad(text, takes);
  }

  private static Reply accepted(String word) {
    return word.equals("understood") || word.equals("u")
        ? Reply.Give.one(new Answer.Confirmed())
        : new Reply.Bad("Read the hazard above, then type understood, or u.");
  }

  private static Reply choice(String text, String word, List<Option> options) {
    if (word.matches("\\d{1,4}")) {
      int number = Integer.parseInt(word);
      if (number >= 1 && number <= options.size()) {
        return Reply.Give.one(new Answer.Chose(options.get(number - 1).id()));
      }
    }
    Option named = Unnamed.option(word, options);
    if (named != null) {
      return Reply.Give.one(new Answer.Chose(named.id()));
    }
    String which = String.join(", ", options.stream().map(Option::id).toList());
    return bad(text, "Type 1 to " + options.size() + ", or one of: " + which + ".");
  }

  private static Reply reading(String text, Prompt.Measure measure) {
    return text.isEmpty()
        ? new Reply.Bad(AnswerHelp.of(measure))
        : Reply.Give.one(Unnamed.reading(text, measure));
  }

  private static Reply waited(String text, String word, Prompt.Wait wait, Instant now) {
    if (word.equals("wait")) {
      return new Reply.Stay();
    }
    if (word.equals("done") || (word.isEmpty() && !now.isBefore(wait.until()))) {
      return Reply.Give.one(new Answer.Waited(null));
    }
    if (word.isEmpty()) {
      return new Reply.Bad(WaitWords.left(wait, now));
    }
    if (word.equals("lift") || word.startsWith("lift ")) {
      String reason = Printable.of(text.substring(4)).strip();
      if (!wait.mayLift()) {
        return new Reply.Bad("This wait can't be ended early. " + WaitWords.left(wait, now));
      }
      return reason.isEmpty()
          ? new Reply.Bad("Type the reason behind lift; it is kept in the record.")
          : Reply.Give.one(new Answer.Waited(reason));
    }
    return bad(text, AnswerHelp.of(wait));
  }

  private static Reply bad(String text, String takes) {
    return new Reply.Bad(
        (text.isEmpty() ? "" : "\"" + shortened(text) + "\" is not taken here. ") + takes);
  }

  /** Typed text made safe and short enough to be repeated to the person. */
  static String shortened(String text) {
    String safe = Printable.of(text);
    return safe.codePointCount(0, safe.length()) <= 60
        ? safe
        : safe.substring(0, safe.offsetByCodePoints(0, 57)) + "...";
  }

  private static String sentence(String message) {
    String first = message.substring(0, 1).toUpperCase(Locale.ROOT);
    return first + message.substring(1) + (message.endsWith(".") ? "" : ".");
  }
}
