package quarterturn.report.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
          measure -> measure.quantity().word() + string(measure.which()),
          compute -> "",
          turn -> amount(turn.amount()),
          wait -> wait.rest() ? "the daily rest" : "",
          Step.Call::procedure,
          done -> "ends: " + done.outcome(),
          handOver -> "ends: " + handOver.outcome());
  private static final Step.Cases<List<Exit>> EXITS =
      new Step.Cases<>(
          tell -> fork(tell.then()),
          choose -> choose.options().stream().map(StepWords::chosen).toList(),
          note -> List.of(new Exit("", note.go())),
          pause -> List.of(new Exit("", pause.go())),
          adjust -> fork(adjust.then()),
          measure -> fork(measure.then()),
          compute -> fork(compute.then()),
          StepWords::felt,
          wait -> List.of(new Exit("after " + time(wait.minutes()), wait.go())),
          call -> fork(call.then()),
          done -> List.of(),
          handOver -> List.of());

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
    return amount instanceof Step.Amount.Undo ? "undo" : "as advised";
  }

  /** Every way out of a step, in the file's order; feels that lead to the same step share one. */
  static List<Exit> exits(Step step) {
    return step.match(EXITS);
  }

  private static Exit chosen(Step.Option option) {
    return new Exit(option.id() + ": " + option.label(), option.go());
  }

  private static List<Exit> fork(Branch.Fork fork) {
    List<Exit> exits = new ArrayList<>();
    for (Branch branch : fork.branches()) {
      exits.add(new Exit(ConditionWords.of(branch.when()), branch.go()));
    }
    if (fork.otherwise() != null) {
      exits.add(new Exit(exits.isEmpty() ? "" : "otherwise", fork.otherwise()));
    }
    return exits;
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
