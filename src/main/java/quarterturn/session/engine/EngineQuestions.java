package quarterturn.session.engine;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Step;
import quarterturn.session.Event;
import quarterturn.session.PastAnswers;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** The few questions that the engine asks of its own accord, and their words. */
public final class EngineQuestions {
  /** Id of the question that tells what was done last, after a break. */
  static final String RESUME = "welcome-back";

  /** Id of the question whether the turn shown before a break was made. */
  static final String RECALL = "was-turn-made";

  public static final String KIND = "kind";
  public static final String STYLE = "style";

  /** Id of the question whether what is on record of the instrument is still so. */
  static final String AS_RECORDED = PastAnswers.AS_RECORDED;

  static final String SAME = "same";

  /** What an answer is recorded under that was given without being asked for. */
  static String differing(Recorded what) {
    return AS_RECORDED + "/" + what.word();
  }

  /** The answers to {@link #AS_RECORDED}, the ordinary one first. */
  static final List<Prompt.Option> AS_RECORDED_OPTIONS =
      List.of(
          new Prompt.Option(SAME, "Yes, as recorded"),
          new Prompt.Option("differs", "No, something differs; ask me"));

  /** Id of the question asked when a procedure needs a result that is stale or was never read. */
  static final String NEEDS = "what-is-missing";

  /** Id of the option to read the needed results first. */
  static final String TAKE_THE_WAY = "take-the-way";

  static final String STOP = "stop";

  /** Id of the question what was done to the neck since the last session, where it has jumped. */
  static final String SINCE = "since-last-time";

  static final String SINCE_ASK =
      "The relief is far from where the last session left it. Was the rod turned, or the instrument"
          + " restrung, in between?";

  static final String SINCE_WHY =
      "A neck that was worked on, or stood in other air, tells nothing of how its rod answers. So"
          + " the first turn is a small one again.";

  /** The answers to {@link #SINCE}, the ordinary one first. */
  static final List<Prompt.Option> SINCE_OPTIONS =
      List.of(
          new Prompt.Option("untouched", "No, or not that I know of"),
          new Prompt.Option("turned", "Yes, the rod was turned"),
          new Prompt.Option("restrung", "Yes, other strings or another tuning"));

  /** Id of the question whether an answer that ends the session was meant. */
  static final String ENDS = "ends-here";

  static final String TAKE_BACK = "take-back";

  /** The answers to {@link #ENDS}, the one that was given first. */
  static final List<Prompt.Option> ENDS_OPTIONS =
      List.of(
          new Prompt.Option("end", "End the session here"),
          new Prompt.Option(TAKE_BACK, "Take my last answer back"));

  /** Outcome of a session that lacks a needed result. */
  static final String NOT_FRESH = "not-fresh";

  /** Text of a hazard's prompt, in place of its step's text. */
  static final String BEFORE = "Read this before you go on.";

  private EngineQuestions() {}

  /** What may be done during a wait whose sheet says nothing of it. */
  static String meanwhile(State state) {
    return "You may play another instrument. Leave this one "
        + (state.bench().has(Fact.AT_PITCH) ? "at pitch" : "as it is")
        + ", without a capo, away from sun and heat.";
  }

  /** What a question of the engine's own is called in a record, or null for any other. */
  public static @Nullable String title(String id) {
    return switch (id) {
      case RESUME -> "Went on after a break";
      case RECALL -> "Was the turn made before the break";
      case KIND -> "What instrument is it";
      case STYLE -> "How does the player play";
      case NEEDS -> "Results that are missing or stale";
      case SINCE -> "What was done since the last session";
      default -> PastAnswers.differing(id) == null ? null : "Not as recorded";
    };
  }

  /**
   * Words after a break: when the person left, in what state, the last three actions, what went
   * stale.
   */
  static String recap(State state, Pending.Break away, Procedure procedure) {
    StringBuilder text = new StringBuilder();
    text.append("Welcome back. ")
        .append(gone(away))
        .append("\nThe instrument was left like this: ")
        .append(away.standing())
        .append('.');
    List<String> actions = lastActions(state, procedure);
    text.append(actions.isEmpty() ? "" : "\nThe last things done:");
    actions.forEach(action -> text.append("\n- ").append(action));
    if (!state.history().others().elsewhere().isEmpty()) {
      text.append("\nIn another session the rod was turned: ");
      text.append(
          state.history().others().elsewhere().stream()
              .map(past -> made(past.turn()))
              .collect(Collectors.joining(", ")));
      text.append(". That counts here too.");
    }
    if (state.pending().recalling()) {
      text.append("\nA turn had been asked for. The next question is whether it was made.");
    } else if (away.stale()) {
      text.append(
          "\nThe last reading is stale, because it was taken before the break."
              + " It is taken once more before anything is turned.");
    } else if (actions.isEmpty()) {
      text.append("\nWe begin at the first step. A fresh reading comes before any turn.");
    } else {
      text.append("\nNothing went stale. We go on where you stopped.");
    }
    return text.toString();
  }

  private static String gone(Pending.Break away) {
    return away.back().isBefore(away.left())
        ? "The clock was set back since you left, so every wait counts from now."
        : "You were away for " + span(Duration.between(away.left(), away.back())) + ".";
  }

  /** A duration in words: "3 min", "5 h", "2 days". */
  static String span(Duration span) {
    long minutes = Math.max(0, span.toMinutes());
    if (minutes < 1) {
      return "less than a minute";
    }
    if (minutes < 120) {
      return minutes + " min";
    }
    return minutes < 48 * 60 ? minutes / 60 + " h" : minutes / (24 * 60) + " days";
  }

  private static List<String> lastActions(State state, Procedure procedure) {
    List<String> actions = new ArrayList<>();
    for (int i = state.log().size() - 1; i >= 0 && actions.size() < 3; i--) {
      String action = action(state.log().get(i), procedure);
      if (!action.isEmpty()) {
        actions.add(0, action);
      }
    }
    return actions;
  }

  private static String action(Event event, Procedure procedure) {
    return event.match(
        new Event.Cases<>(
            started -> "",
            accepted -> "",
            told -> told.step().equals(RESUME) ? "" : "done: " + brief(procedure, told.step()),
            noted -> "noted: " + noted.text(),
            adjusted -> words(adjusted.change()) + " on " + adjusted.string(),
            chose -> "answered: " + label(procedure, chose),
            read -> "read " + read.quantity().said() + string(read) + ": " + value(read),
            offered -> "",
            undoAsked -> "",
            turned -> made(turned.turn()) + ", felt " + turned.feel().word(),
            recalled -> made(recalled.turned()) + " (recalled after a break)",
            began -> "",
            waited -> "waited",
            passed -> "",
            back -> "",
            doubted -> "",
            corrected -> "took the last answer back",
            left -> "",
            resumed -> "",
            ended -> "",
            discarded -> ""));
  }

  /** The shortest text for what a step says, without blanks to fill. */
  private static String brief(Procedure procedure, String id) {
    Step step = procedure.steps().get(id);
    if (step == null) {
      return words(id);
    }
    String brief = step.words().brief();
    String text = brief == null ? step.words().text() : brief;
    String first = text.split("(?<=\\.)\\s", 2)[0];
    return first.contains("{") ? words(id) : first.replaceAll("\\.$", "");
  }

  private static String label(Procedure procedure, Event.Chose chose) {
    if (procedure.steps().get(chose.step()) instanceof Step.Choose choose) {
      for (Step.Option option : choose.options()) {
        if (option.id().equals(chose.option()) && !option.label().contains("{")) {
          return option.label();
        }
      }
    }
    return words(chose.option());
  }

  private static String string(Event.Read read) {
    return read.string() == null ? "" : " on " + read.string();
  }

  static String value(Event.Read read) {
    Bracket bracket = read.bracket();
    if (bracket != null) {
      return bracket.toString();
    }
    return read.value() == null
        ? "could not be measured"
        : Decimals.plain(read.value()) + " " + read.quantity().unit();
  }

  /** A turn in words: "rod tightened 1/8 turn". */
  static String made(Turn turn) {
    if (turn.turns() == 0) {
      return "rod did not move";
    }
    return (turn.turns() > 0 ? "rod tightened " : "rod loosened ") + turn;
  }

  /** What comes before the first tightening of a nut that nobody has turned. */
  static String freeing(Turn back) {
    return "No turn of this truss rod nut is on record, so free it. Facing its end, loosen it by "
        + back
        + ", anticlockwise ("
        + Decimals.print(back.degrees(), 0)
        + " degrees), then turn it back to where it was. Stop at a creak or a sharp resistance. Both"
        + " ways count as turned today.";
  }

  private static String words(String id) {
    return id.replace('-', ' ');
  }

  /** Text of the daily rest before a turn; the face adds until when. */
  static final String REST =
      "The rod has turned as much as it may in one day. Wood goes on moving for hours after a turn,"
          + " and a neck turned on too soon ends up past its range.\nLet it rest. You can close the"
          + " program and come back.";
}
