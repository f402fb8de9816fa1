package quarterturn.procedure.check;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Predicate;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;

/** Which steps lead where, whatever is known. */
final class Shape {
  private Shape() {}

  /** Whether an end can be reached. */
  static boolean ends(Procedure procedure, String from) {
    return reach(procedure, from, id -> true).stream()
        .map(procedure.steps()::get)
        .anyMatch(step -> step instanceof Step.Done || step instanceof Step.HandOver);
  }

  /**
   * Every step that can be reached from one, itself included.
   *
   * @param through only steps that are so are passed
   */
  static Set<String> reach(Procedure procedure, String from, Predicate<String> through) {
    Deque<String> open = new ArrayDeque<>();
    Set<String> seen = new HashSet<>();
    if (through.test(from) && seen.add(from)) {
      open.add(from);
    }
    while (!open.isEmpty()) {
      Step step = procedure.steps().get(open.pop());
      if (step == null) {
        continue;
      }
      for (String next : Ways.from(step)) {
        if (through.test(next) && seen.add(next)) {
          open.add(next);
        }
      }
    }
    return seen;
  }
}
