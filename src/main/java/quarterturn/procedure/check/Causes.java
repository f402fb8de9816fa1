package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;

/**
 * Finds which faults of a procedure follow from others, so that each cause is shown once. A fault
 * follows from another of an earlier kind that stands on the way to it, and from one of its own
 * kind that says the same of another step.
 */
final class Causes {
  /**
   * The rules whose faults bring others along, the deepest cause first: what is not reached or
   * cannot be walked, then what a reading lacks, then what rests on it.
   */
  private static final List<String> ORDER =
      List.of(
          "cannot-prove",
          "unknown-outcome",
          "over-limit",
          "open-branches",
          "overlapping-branches",
          "idle-branch",
          "unreachable-step",
          "uncounted-reading",
          "turn-after-turn",
          "early-reading",
          "which-string",
          "stale-reading",
          "turn-needs",
          "turn-direction",
          "turn-reading",
          "turn-detuned",
          "turn-day",
          "not-as-expected");

  private final Procedure procedure;

  /** The step that stands at a place, itself or with one of its branches. */
  private final Map<Mark, String> at = new HashMap<>();

  private Causes(Procedure procedure) {
    this.procedure = procedure;
    for (Step step : procedure.steps().values()) {
      for (Branch branch : step.fork().branches()) {
        at.put(branch.mark(), step.id());
      }
      at.put(step.mark(), step.id());
    }
  }

  /** The faults that are no other's consequence, in their order, each with those that are its. */
  static List<Fault> first(Procedure procedure, List<Fault> faults) {
    return new Causes(procedure).first(faults);
  }

  private List<Fault> first(List<Fault> faults) {
    Map<Fault, List<Fault>> causes = new LinkedHashMap<>();
    faults.stream()
        .sorted(Comparator.comparingInt(fault -> rank(fault.rule())))
        .forEach(
            fault ->
                causes.keySet().stream()
                    .filter(cause -> explains(cause, causes.get(cause), fault))
                    .findFirst()
                    .ifPresentOrElse(
                        cause -> causes.getOrDefault(cause, List.of()).add(fault),
                        () -> causes.put(fault, new ArrayList<>())));
    return faults.stream()
        .filter(causes::containsKey)
        .map(cause -> cause.with(causes.getOrDefault(cause, List.of())))
        .toList();
  }

  private static int rank(String rule) {
    int rank = ORDER.indexOf(rule);
    return rank < 0 ? ORDER.size() : rank;
  }

  private boolean explains(Fault cause, @Nullable List<Fault> follows, Fault fault) {
    return explains(cause, fault)
        || (follows != null && follows.stream().anyMatch(one -> alike(one, fault)));
  }

  /** Whether two faults say the same of two steps. */
  private boolean alike(Fault one, Fault other) {
    return one.rule().equals(other.rule())
        && one.wrong()
            .replace(at.getOrDefault(one.mark(), ""), "")
            .equals(other.wrong().replace(at.getOrDefault(other.mark(), ""), ""));
  }

  private boolean explains(Fault cause, Fault fault) {
    String step = at.get(cause.mark());
    String other = at.get(fault.mark());
    if (step == null || other == null) {
      return cause.rule().equals("cannot-prove");
    }
    if (cause.rule().equals(fault.rule())) {
      return alike(cause, fault) || unreached(cause, step, other);
    }
    boolean known = rank(cause.rule()) < ORDER.size() && rank(fault.rule()) < ORDER.size();
    return known && (fault.path().contains(step) || unreached(cause, step, other));
  }

  /** Whether a step that is not reached is only the next one on a way that is not taken. */
  private boolean unreached(Fault cause, String step, String other) {
    return rank(cause.rule()) <= rank("unreachable-step")
        && Ways.reach(procedure, step, any -> true).contains(other);
  }
}
