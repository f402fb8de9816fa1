package quarterturn.procedure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
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
   * Whether a rod turn can follow from {@code step} on with no relief reading on the lowest string
   * before it, which is the reading that turns rest on.
   */
  public static boolean turnBeforeReading(Procedure procedure, String step) {
    return reaches(procedure, step, Step.TurnRod.class::isInstance, Ways::turnsOrReads);
  }

  /** Whether a done or a hand-over can be reached from {@code step} on. */
  public static boolean ends(Procedure procedure, String step) {
    return reaches(procedure, step, Step.End.class::isInstance, passed -> false);
  }

  /** Whether the next rod turn from {@code step} on may be one that takes the last turn back. */
  public static boolean undoNext(Procedure procedure, String step) {
    return reaches(
        procedure,
        step,
        s -> s instanceof Step.TurnRod turn && turn.amount() instanceof Step.Amount.Undo,
        Ways::turnsOrReads);
  }

  private static boolean turnsOrReads(Step step) {
    return step instanceof Step.TurnRod
        || (step instanceof Step.Measure measure && measure.which() == Which.LOWEST);
  }

  /** Whether a reading on a string can follow from {@code step} on with no tuning before it. */
  public static boolean readingBeforeTuning(Procedure procedure, String step) {
    return reaches(
        procedure,
        step,
        s -> s instanceof Step.Measure measure && measure.quantity().onString(),
        s -> s.establishes().contains(Fact.AT_PITCH));
  }

  /**
   * Whether a wait of at most {@code minutes} can follow from {@code step} on.
   *
   * @param past what steps are not passed before it
   */
  public static boolean waitBefore(
      Procedure procedure, String step, int minutes, Predicate<Step> past) {
    return reaches(
        procedure, step, s -> s instanceof Step.Wait wait && wait.minutes() <= minutes, past);
  }

  /**
   * Whether a step can follow from {@code from} on, itself included.
   *
   * @param wanted what it is like
   * @param past what steps are not passed
   */
  private static boolean reaches(
      Procedure procedure, String from, Predicate<Step> wanted, Predicate<Step> past) {
    return reach(procedure, from, past.negate()).stream().map(procedure::step).anyMatch(wanted);
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
