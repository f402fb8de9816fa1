package quarterturn.report.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.ConditionWords;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Which;

/** Words for one step in a drawing. */
final class StepWords {
  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  /** The files that stand for a block, by their folder. */
  private static final Pattern BLOCK =
      Pattern.compile("(?:.*[/\\\\])?(?:blocks|safety)[/\\\\]([^/\\\\]+)\\.yaml");

  private static final Step.Cases<String> KIND =
      new Step.Cases<>(
          tell -> "tell",
          choose -> "choose",
          note -> "note",
          pause -> "pause",
          adjust -> "adjust",
          measure -> "measure",
          compute -> "compute",
          turn -> "turn",
          wait -> "wait",
          call -> "call",
          done -> "done",
          handOver -> "hand-over");
  private static final Step.Cases<String> ABOUT =
      new Step.Cases<>(
          tell -> "",
          choose -> "",
          note -> "",
          pause -> "",
          adjust -> adjust.adjustment().word(),
          measure -> measure.quantity().said() + string(measure.which()),
          compute -> "",
          turn -> amount(turn.amount()),
          wait -> wait.rest() ? "the daily rest" : "",
          Step.Call::procedure,
          done -> "ends: " + done.outcome(),
          handOver -> "ends: " + handOver.outcome());

  private StepWords() {}

  /**
   * A way out of a step.
   *
   * @param words when it is taken; empty for a step with a single way
   */
  record Exit(String words, String to) {}

  /** The kind of step, as a file names it. */
  static String kind(Step step) {
    return step.match(KIND);
  }

  /** What a step works on: a quantity, calculation, procedure or outcome; empty for most steps. */
  static String about(Step step) {
    return step.match(ABOUT);
  }

  private static String string(@Nullable Which which) {
    if (which == null) {
      return "";
    }
    return which == Which.EACH ? ", each string" : ", " + which.word() + " string";
  }

  private static String amount(Step.Amount amount) {
    if (amount instanceof Step.Amount.Fixed fixed) {
      String way = fixed.turn().turns() > 0 ? "tighten " : "loosen ";
      return way + fixed.turn();
    }
    return amount instanceof Step.Amount.Undo
        ? "undo"
        : amount instanceof Step.Amount.SetBack ? "set back" : "as advised";
  }

  /** Every way out of a step, in the file's order; feels that lead to the same step share one. */
  static List<Exit> exits(Step step) {
    if (step instanceof Step.TurnRod turn) {
      return felt(turn);
    }
    if (step instanceof Step.Choose choose) {
      return choose.options().stream().map(StepWords::chosen).toList();
    }
    if (step instanceof Step.Wait wait) {
      return List.of(new Exit("after " + time(wait.minutes()), wait.go()));
    }
    return step.exits().stream()
        .map(
            exit ->
                new Exit(
                    exit.when() == null ? exit.word() : ConditionWords.of(exit.when()), exit.to()))
        .toList();
  }

  /** Every way out of a step, in the file's order, in words that stand without the step. */
  static List<Exit> reasons(Step step) {
    return step.exits().stream().map(exit -> new Exit(reason(step, exit), exit.to())).toList();
  }

  private static String reason(Step step, Step.Exit exit) {
    if (exit.when() != null) {
      return ConditionWords.of(exit.when());
    }
    if (step instanceof Step.Choose) {
      return step.id() + " is " + exit.word();
    }
    if (step instanceof Step.TurnRod) {
      return "felt " + exit.word();
    }
    List<Branch> others = step.fork().branches();
    return others.isEmpty()
        ? "after " + step.id()
        : others.stream()
            .map(branch -> ConditionWords.of(branch.when()))
            .collect(Collectors.joining(" or ", "unless ", ""));
  }

  /** The block that a step was written in; empty for the procedure's own file and shared ends. */
  static String block(Step step) {
    Matcher file = BLOCK.matcher(step.mark().file());
    return file.matches() && !(step instanceof Step.End) ? file.group(1) : "";
  }

  private static Exit chosen(Step.Option option) {
    return new Exit(option.id() + ": " + option.label(), option.go());
  }

  private static List<Exit> felt(Step.TurnRod turn) {
    Map<String, List<String>> feels = new LinkedHashMap<>();
    for (Feel feel : Feel.values()) {
      String to = turn.felt().get(feel);
      if (to != null) {
        feels.computeIfAbsent(to, key -> new ArrayList<>()).add(feel.word());
      }
    }
    List<Exit> exits = new ArrayList<>();
    feels.forEach((to, words) -> exits.add(new Exit("felt " + String.join(" or ", words), to)));
    return exits;
  }

  private static String time(int minutes) {
    if (minutes % DAY == 0 && minutes > DAY) {
      return minutes / DAY + " days";
    }
    return minutes % HOUR == 0 ? minutes / HOUR + " h" : minutes + " min";
  }
}
