package quarterturn.procedure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;

/**
 * What an end says with the outcome {@code in-window}: each quantity that its procedure reads on
 * strings stands in its window, on every string that could be read. Where nothing is read, a
 * procedure that it calls has ended so.
 */
public final class InWindow {
  public static final String OUTCOME = "in-window";

  private InWindow() {}

  /** An outcome as it is shown: files say window and owner where people read range and cause. */
  public static String shown(String outcome) {
    String owner = "owner-";
    String words =
        outcome.startsWith(owner) ? "cause: " + outcome.substring(owner.length()) : outcome;
    // Not by patterns, since long lists are made of them.
    String parted = "-" + words + "-";
    String ranged =
        parted.replace("-in-window-", "-in-range-").replace("-of-window-", "-of-range-");
    return ranged.substring(1, ranged.length() - 1).replace('-', ' ');
  }

  /** Whether a step is an end that says so. */
  public static boolean says(Step step) {
    return step instanceof Step.Done done && done.outcome().equals(OUTCOME);
  }

  /** The steps of a procedure, in which such ends expect what they say. */
  public static Map<String, Step> expected(Map<String, Step> steps) {
    Condition says = says(steps);
    Map<String, Step> expecting = new LinkedHashMap<>(steps);
    for (Step step : steps.values()) {
      if (says != null && says(step)) {
        Words words = step.words();
        Condition own = words.expects();
        Condition both = own == null ? says : all(Stream.of(own, says));
        expecting.put(
            step.id(), new Step.Done(step.id(), words.expecting(both), step.mark(), OUTCOME));
      }
    }
    return expecting;
  }

  /** What such an end says in a procedure of these steps; null where nothing could show it. */
  private static @Nullable Condition says(Map<String, Step> steps) {
    Set<Quantity> read = new LinkedHashSet<>();
    List<Condition> called = new ArrayList<>();
    for (Step step : steps.values()) {
      if (step instanceof Step.Measure measure && measure.quantity().onString()) {
        read.add(measure.quantity());
      } else if (step instanceof Step.Call call) {
        called.add(new Condition.Chosen(call.id(), Set.of(OUTCOME)));
      }
    }
    if (read.isEmpty()) {
      return called.isEmpty() ? null : new Condition.Any(called);
    }
    return all(read.stream().map(InWindow::says));
  }

  /** That all of these hold, as a file can write it: none of the parts is itself such a list. */
  private static Condition all(Stream<Condition> conditions) {
    List<Condition> parts =
        conditions
            .flatMap(c -> c instanceof Condition.All all ? all.parts().stream() : Stream.of(c))
            .toList();
    return parts.size() == 1 ? parts.get(0) : new Condition.All(parts);
  }

  /**
   * Relief is held to its window by one reading, in it or with its middle there; the others are,
   * string by string.
   */
  private static Condition says(Quantity quantity) {
    if (quantity.ofBow()) {
      return new Condition.Any(
          List.of(
              new Condition.Against(quantity, Verdict.IN),
              new Condition.Leans(quantity, Verdict.IN)));
    }
    Condition out =
        new Condition.Any(
            List.of(
                new Condition.Strings(false, quantity, Verdict.BELOW),
                new Condition.Strings(false, quantity, Verdict.ABOVE),
                new Condition.Strings(false, quantity, Verdict.TOUCHES),
                new Condition.Strings(false, quantity, Verdict.UNDECIDED)));
    return new Condition.All(
        List.of(new Condition.Strings(false, quantity, Verdict.IN), new Condition.Not(out)));
  }
}
