package quarterturn.procedure.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;

/**
 * The loops of a procedure that nothing limits. A loop is limited where it passes a step and a way
 * that is open only while that step was reached less than so often; where it turns the rod and asks
 * what the neck did; and where it rests for a day and asks what was turned that day.
 */
final class Loops {
  private record Way(String from, String to) {}

  /**
   * What limits the loops that pass it.
   *
   * @param steps loops that pass one of these
   * @param ways and one of these ways come to an end
   */
  private record Limit(Set<String> steps, Set<Way> ways) {}

  private final Map<String, Set<String>> next = new LinkedHashMap<>();
  private final List<Limit> limits = new ArrayList<>();

  Loops(Procedure procedure) {
    Collection<Step> steps = procedure.steps().values();
    steps.forEach(step -> next.put(step.id(), new LinkedHashSet<>(Ways.from(step))));
    Map<String, Set<Way>> counted = new LinkedHashMap<>();
    Set<String> turns = new HashSet<>();
    Set<String> rests = new HashSet<>();
    Set<Way> progress = new HashSet<>();
    Set<Way> days = new HashSet<>();
    for (Step step : steps) {
      if (step instanceof Step.TurnRod) {
        turns.add(step.id());
      } else if (step instanceof Step.Wait wait && wait.rest()) {
        rests.add(step.id());
      }
      Branch.Fork fork = Frame.fork(step);
      if (fork == null) {
        continue;
      }
      counted(step, fork, counted);
      if (asks(fork, Subject.Neck.class)) {
        Ways.from(step).forEach(to -> progress.add(new Way(step.id(), to)));
      }
      if (asks(fork, Subject.Turning.class)) {
        Ways.from(step).forEach(to -> days.add(new Way(step.id(), to)));
      }
    }
    counted.forEach((step, ways) -> limits.add(new Limit(Set.of(step), ways)));
    limits.add(new Limit(turns, progress));
    limits.add(new Limit(rests, days));
  }

  private static boolean asks(Branch.Fork fork, Class<? extends Subject> about) {
    return fork.branches().stream()
        .flatMap(branch -> Subject.subjects(branch.when()).stream())
        .anyMatch(about::isInstance);
  }

  /** Ways that are open only while a step was reached less than so often. */
  private static void counted(Step step, Branch.Fork fork, Map<String, Set<Way>> counted) {
    Map<String, Set<String>> limited = new HashMap<>();
    Map<String, Set<String>> free = new HashMap<>();
    for (Branch branch : fork.branches()) {
      Set<String> by = below(branch.when());
      for (String one : by) {
        limited.computeIfAbsent(branch.go(), go -> new HashSet<>()).add(one);
      }
      free.computeIfAbsent(branch.go(), go -> new HashSet<>(by)).retainAll(by);
    }
    limited.forEach(
        (go, steps) -> {
          Set<String> always = free.getOrDefault(go, Set.of());
          if (!go.equals(fork.otherwise())) {
            always.forEach(
                one ->
                    counted.computeIfAbsent(one, s -> new HashSet<>()).add(new Way(step.id(), go)));
          }
        });
  }

  /** The steps of which a condition demands that they were reached less than so often. */
  private static Set<String> below(Condition condition) {
    if (condition instanceof Condition.Not not && not.part() instanceof Condition.Reached reached) {
      return Set.of(reached.step());
    }
    Set<String> below = new HashSet<>();
    if (condition instanceof Condition.All all) {
      all.parts().forEach(part -> below.addAll(below(part)));
    }
    return below;
  }

  /** The shortest endless loop of each knot of steps, as the ids on it. */
  List<List<String>> endless() {
    List<List<String>> found = new ArrayList<>();
    for (Set<String> knot : knots(next)) {
      List<String> loop = endless(within(next, knot), knot);
      if (loop != null) {
        found.add(loop);
      }
    }
    return found;
  }

  /** An endless loop within a knot, or null: one that leaves out what would limit it. */
  private @Nullable List<String> endless(Map<String, Set<String>> graph, Set<String> knot) {
    for (Limit limit : limits) {
      Set<Way> ways = new HashSet<>();
      for (Way way : limit.ways()) {
        if (graph.getOrDefault(way.from(), Set.of()).contains(way.to())) {
          ways.add(way);
        }
      }
      if (ways.isEmpty() || Collections.disjoint(knot, limit.steps())) {
        continue;
      }
      Map<String, Set<String>> passed = new LinkedHashMap<>(graph);
      passed.keySet().removeAll(limit.steps());
      List<String> loop = inKnots(passed);
      return loop != null ? loop : inKnots(without(graph, ways));
    }
    return shortest(graph);
  }

  private @Nullable List<String> inKnots(Map<String, Set<String>> graph) {
    for (Set<String> knot : knots(graph)) {
      List<String> loop = endless(within(graph, knot), knot);
      if (loop != null) {
        return loop;
      }
    }
    return null;
  }

  private static Map<String, Set<String>> without(Map<String, Set<String>> graph, Set<Way> ways) {
    Map<String, Set<String>> less = new LinkedHashMap<>();
    graph.forEach(
        (from, tos) -> {
          Set<String> left = new LinkedHashSet<>(tos);
          left.removeIf(to -> ways.contains(new Way(from, to)));
          less.put(from, left);
        });
    return less;
  }

  private static Map<String, Set<String>> within(Map<String, Set<String>> graph, Set<String> knot) {
    Map<String, Set<String>> inner = new LinkedHashMap<>();
    for (String step : graph.keySet()) {
      if (knot.contains(step)) {
        Set<String> tos = new LinkedHashSet<>(graph.getOrDefault(step, Set.of()));
        tos.retainAll(knot);
        inner.put(step, tos);
      }
    }
    return inner;
  }

  /** Sets of steps that all lead to each other, in the file's order. */
  private static List<Set<String>> knots(Map<String, Set<String>> graph) {
    return new Knots(graph).all();
  }

  /** The shortest loop of a graph. */
  private static @Nullable List<String> shortest(Map<String, Set<String>> graph) {
    List<String> best = null;
    for (String start : graph.keySet()) {
      List<String> loop = back(graph, start);
      if (loop != null && (best == null || loop.size() < best.size())) {
        best = loop;
      }
    }
    return best;
  }

  private static @Nullable List<String> back(Map<String, Set<String>> graph, String start) {
    Map<String, String> from = new HashMap<>();
    Deque<String> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      String step = open.poll();
      for (String to : graph.getOrDefault(step, Set.of())) {
        if (to.equals(start)) {
          List<String> loop = new ArrayList<>(List.of(step));
          for (String at = step; !at.equals(start); ) {
            at = from.getOrDefault(at, start);
            loop.add(0, at);
          }
          return loop;
        }
        if (from.putIfAbsent(to, step) == null) {
          open.add(to);
        }
      }
    }
    return null;
  }
}
