package quarterturn.session.engine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Way;
import quarterturn.procedure.Ways;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Verdict;

/**
 * Lists the steps that follow a step for certain: up to the first fork, and the first step on each
 * of its ways. The list does not allow for a reading that can't be taken.
 *
 * @param fill fills the blanks of a text
 */
record Coming(Procedure procedure, UnaryOperator<String> fill) {
  private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.?!:]) ");

  /** Most steps in the list. */
  private static final int MOST = 8;

  /** The steps after a step, a line each with its id, by which a choice can be answered early. */
  List<String> after(Step from) {
    List<String> lines = new ArrayList<>();
    Set<String> seen = new HashSet<>(Set.of(from.id()));
    Step step = from;
    while (lines.size() < MOST) {
      List<Way> ways = ways(step);
      if (ways.stream().map(Way::to).distinct().count() != 1) {
        ways.forEach(way -> lines.add("if " + way.label() + ": " + line(procedure.step(way.to()))));
        return lines;
      }
      step = procedure.step(ways.get(0).to());
      if (!seen.add(step.id())) {
        return lines;
      }
      if (!(step instanceof Step.Compute)) {
        lines.add(line(step));
      }
    }
    return lines;
  }

  private List<Way> ways(Step step) {
    List<Way> ways = new ArrayList<>(Ways.of(procedure.id(), step));
    if (step instanceof Step.Measure measure) {
      List<Branch> branches = measure.then().branches();
      for (int i = branches.size() - 1; i >= 0; i--) {
        if (missing(branches.get(i).when())) {
          ways.remove(i);
        }
      }
    }
    return ways;
  }

  private static boolean missing(Condition when) {
    return when instanceof Condition.Against against && against.verdict() == Verdict.NOT_MEASURED;
  }

  private String line(Step step) {
    @Nullable String words = step.words().forRole(Role.TECHNICIAN);
    // A step that asks nothing has no name that anybody could type.
    return step instanceof Step.Compute
        ? "as it was read"
        : words.isBlank() ? step.id() : step.id() + " (" + sentence(fill.apply(words)) + ")";
  }

  /** The first sentence of a text. */
  private static String sentence(String text) {
    return SENTENCE_END.split(text, 2)[0];
  }
}
