package quarterturn.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.ConditionWords;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Step;
import quarterturn.procedure.Which;

/** What a drawing says of one step. */
final class StepWords {
  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  private StepWords() {}

  /**
   * One way on.
   *
   * @param words when it is taken; empty where it always is
   */
  record Exit(String words, String to) {}

  /** The kind of step, as a file names it. */
  static String kind(Step step) {
    if (step instanceof Step.Tell) {
      return "tell";
    } else if (step instanceof Step.Choose) {
      return "choose";
    } else if (step instanceof Step.Note) {
      return "note";
    } else if (step instanceof Step.Pause) {
      return "pause";
    } else if (step instanceof Step.Measure) {
      return "measure";
    } else if (step instanceof Step.Compute) {
      return "compute";
    } else if (step instanceof Step.TurnRod) {
      return "turn";
    } else if (step instanceof Step.Adjust) {
      return "adjust";
    } else if (step instanceof Step.Wait) {
      return "wait";
    } else if (step instanceof Step.Call) {
      return "call";
    }
    return step instanceof Step.Done ? "done" : "hand-over";
  }

  /** What it works on: a quantity, a calculation, a procedure, an outcome; empty for most. */
  static String about(Step step) {
    if (step instanceof Step.Measure measure) {
      return measure.quantity().word() + string(measure.which());
    } else if (step instanceof Step.Compute compute) {
      return compute.calculation().word();
    } else if (step instanceof Step.TurnRod turn) {
      return amount(turn.amount());
    } else if (step instanceof Step.Adjust adjust) {
      return adjust.adjustment().word();
    } else if (step instanceof Step.Wait wait && wait.rest()) {
      return "the daily rest";
    } else if (step instanceof Step.Call call) {
      return call.procedure();
    } else if (step instanceof Step.Done done) {
      return "ends: " + done.outcome();
    } else if (step instanceof Step.HandOver over) {
      return "ends: " + over.outcome();
    }
    return "";
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

  /** Every way on, in the file's order; feels that lead to the same step together. */
  static List<Exit> exits(Step step) {
    if (step instanceof Step.Tell tell) {
      return fork(tell.then());
    } else if (step instanceof Step.Choose choose) {
      return choose.options().stream()
          .map(option -> new Exit(option.id() + ": " + option.label(), option.go()))
          .toList();
    } else if (step instanceof Step.Note note) {
      return List.of(new Exit("", note.go()));
    } else if (step instanceof Step.Pause pause) {
      return List.of(new Exit("", pause.go()));
    } else if (step instanceof Step.Measure measure) {
      return fork(measure.then());
    } else if (step instanceof Step.Compute compute) {
      return fork(compute.then());
    } else if (step instanceof Step.TurnRod turn) {
      return felt(turn);
    } else if (step instanceof Step.Adjust adjust) {
      return fork(adjust.then());
    } else if (step instanceof Step.Wait wait) {
      return List.of(new Exit("after " + time(wait.minutes()), wait.go()));
    } else if (step instanceof Step.Call call) {
      return fork(call.then());
    }
    return List.of();
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
