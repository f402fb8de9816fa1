package quarterturn.procedure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.ConditionWords;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.kind.Which;

/** Where the steps of a procedure lead. */
public final class Ways {
  private Ways() {}

  /** Every step that {@code step} can go to. */
  public static Set<String> from(Step step) {
    return step.exits().stream()
        .map(Step.Exit::to)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The steps that a call can lead to where what it called has ended with an outcome. */
  public static Set<String> after(Step.Call call, String outcome) {
    Set<String> steps = new LinkedHashSet<>();
    for (Step.Exit exit : call.exits()) {
      Condition when = exit.when();
      boolean alone = when == null || when.subjects().equals(Set.of(new Subject.Choice(call.id())));
      boolean holds = when == null || (alone && when.holds(subject -> new Cell.Option(outcome)));
      if (!alone || holds) {
        steps.add(exit.to());
      }
      if (alone && holds) {
        break;
      }
    }
    return steps;
  }

  /** Every way on in a procedure, in the file's order. */
  public static List<Way> of(Procedure procedure) {
    return procedure.steps().values().stream()
        .flatMap(step -> of(procedure.id(), step).stream())
        .toList();
  }

  /** Every way on from {@code step}, in order, each with a label of its own. */
  public static List<Way> of(String procedure, Step step) {
    List<Way> ways = new ArrayList<>();
    Set<String> labels = new HashSet<>();
    for (Step.Exit exit : step.exits()) {
      String words = exit.when() == null ? exit.word() : ConditionWords.of(exit.when());
      String label = labels.add(words) ? words : words + ", branch " + (ways.size() + 1);
      ways.add(new Way(procedure, step.id(), label, exit.to()));
    }
    return List.copyOf(ways);
  }

  /**
   * The steps from which a rod turn can follow with no relief reading on the lowest string before
   * it, which is the reading that turns rest on.
   */
  public static Set<String> turnBeforeReading(Procedure procedure) {
    return before(procedure, Step.TurnRod.class::isInstance, Ways::turnsOrReads);
  }

  /** The steps from which a done or a hand-over can be reached. */
  public static Set<String> ending(Procedure procedure) {
    return before(procedure, Step.End.class::isInstance, passed -> false);
  }

  /** The steps from which the next rod turn may be one that takes the last turn back. */
  public static Set<String> undoNext(Procedure procedure) {
    return before(
        procedure,
        s -> s instanceof Step.TurnRod turn && turn.amount() instanceof Step.Amount.Undo,
        Ways::turnsOrReads);
  }

  private static boolean turnsOrReads(Step step) {
    return step instanceof Step.TurnRod
        || (step instanceof Step.Measure measure && measure.which() == Which.LOWEST);
  }

  /** The steps from which a reading on a string can follow with no tuning before it. */
  public static Set<String> readingBeforeTuning(Procedure procedure) {
    return before(
        procedure,
        s -> s instanceof Step.Measure measure && measure.quantity().onString(),
        s -> s.establishes().contains(Fact.AT_PITCH));
  }

  /**
   * The steps from which a wait of at most {@code minutes} can follow.
   *
   * @param past what steps are not passed before it
   */
  public static Set<String> waitBefore(Procedure procedure, int minutes, Predicate<Step> past) {
    return before(procedure, s -> s instanceof Step.Wait wait && wait.minutes() <= minutes, past);
  }

  /**
   * The steps from which a step can follow, itself included.
   *
   * @param wanted what it is like
   * @param past what steps are not passed
   */
  private static Set<String> before(
      Procedure procedure, Predicate<Step> wanted, Predicate<Step> past) {
    Map<String, List<String>> back = new HashMap<>();
    Deque<String> open = new ArrayDeque<>();
    for (Step step : procedure.steps().values()) {
      if (wanted.test(step)) {
        open.add(step.id());
      }
      if (!past.test(step)) {
        step.exits()
            .forEach(
                exit -> back.computeIfAbsent(exit.to(), to -> new ArrayList<>()).add(step.id()));
      }
    }
    Set<String> seen = new HashSet<>();
    while (!open.isEmpty()) {
      String step = open.pop();
      if (seen.add(step)) {
        open.addAll(back.getOrDefault(step, List.of()));
      }
    }
    return seen;
  }

  /**
   * Every step that can be reached from one, itself included.
   *
   * @param through only steps that are so are passed; others are reached
   */
  public static Set<String> reach(Procedure procedure, String from, Predicate<Step> through) {
    Deque<String> open = new ArrayDeque<>(Set.of(from));
    Set<String> seen = new LinkedHashSet<>();
    while (!open.isEmpty()) {
      Step step = procedure.steps().get(open.pop());
      if (step != null && seen.add(step.id()) && through.test(step)) {
        step.exits().forEach(exit -> open.add(exit.to()));
      }
    }
    return seen;
  }
}
