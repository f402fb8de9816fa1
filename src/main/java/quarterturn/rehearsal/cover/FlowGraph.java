package quarterturn.rehearsal.cover;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.Way;
import quarterturn.procedure.Ways;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.session.Passage;
import quarterturn.session.Place;

/** The flow graph of a procedure and of those it calls: its edges lead from step to step. */
final class FlowGraph {
  private final Library library;
  private final List<Way> ways = new ArrayList<>();
  private final Map<Place, Place> places = new HashMap<>();
  private final Map<Place, List<Way>> out = new HashMap<>();
  private final Map<Place, List<Edge>> from = new LinkedHashMap<>();
  private final List<Edge> passable = new ArrayList<>();
  private final Map<Place, List<Edge>> open = new IdentityHashMap<>();
  private final Map<Place, List<Edge>> to = new IdentityHashMap<>();
  private final Map<Place, List<Place>> aside = new HashMap<>();
  private final Map<Way, String> closed;

  FlowGraph(Library library) {
    this.library = library;
    Set<Procedure> called = called(library.main(), new LinkedHashSet<>());
    called.forEach(one -> ways.addAll(Ways.of(one)));
    for (Procedure procedure : library.procedures().values()) {
      for (Step step : procedure.steps().values()) {
        lay(procedure, step);
      }
      for (String need : procedure.needs()) {
        Results.Result result = library.results().results().get(need);
        Procedure by = result == null ? null : library.procedures().get(result.by());
        if (by != null) {
          through(new Place(procedure.id(), procedure.begin()), by, called.contains(by));
        }
      }
    }
    closed = new Closed(library, this).ways();
    for (List<Edge> edges : from.values()) {
      for (Edge edge : edges) {
        if (edge.way() == null || !closed.containsKey(edge.way())) {
          passable.add(edge);
          open.computeIfAbsent(edge.from(), p -> new ArrayList<>()).add(edge);
          to.computeIfAbsent(edge.to(), p -> new ArrayList<>()).add(edge);
        }
      }
    }
  }

  /**
   * A procedure and all that it calls, directly or not, without those that it needs done before.
   */
  private Set<Procedure> called(Procedure procedure, Set<Procedure> seen) {
    if (seen.add(procedure)) {
      for (Step step : procedure.steps().values()) {
        if (step instanceof Step.Call call) {
          called(library.procedure(call.procedure()), seen);
        }
      }
    }
    return seen;
  }

  private void lay(Procedure procedure, Step step) {
    Place here = new Place(procedure.id(), step.id());
    List<Condition> whens = step.fork().branches().stream().map(Branch::when).toList();
    List<Way> own = Ways.of(procedure.id(), step);
    out.put(here, own);
    for (int i = 0; i < own.size(); i++) {
      Way way = own.get(i);
      Condition when = i < whens.size() ? whens.get(i) : null;
      List<Condition> unless = whens.subList(0, Math.min(i, whens.size()));
      Place next = new Place(procedure.id(), way.to());
      if (step instanceof Step.Call call) {
        for (Place end : ends(library.procedure(call.procedure()), step.id(), when)) {
          add(new Edge(end, next, way, when, unless));
        }
      } else {
        add(new Edge(here, next, way, when, unless));
      }
    }
    if (step instanceof Step.Measure measure && measure.quantity().bracket()) {
      // Over a long break the strings drift, so that they are tuned again before such a reading.
      add(new Edge(here, new Place(procedure.id(), procedure.retune())));
    }
    if (step instanceof Step.Call call) {
      Procedure called = library.procedure(call.procedure());
      add(new Edge(here, new Place(called.id(), called.begin())));
    }
  }

  /** The final steps of a called procedure whose outcome a condition on the call accepts. */
  private static List<Place> ends(Procedure called, String call, @Nullable Condition when) {
    List<Place> ends = new ArrayList<>();
    for (Step step : called.steps().values()) {
      if (step instanceof Step.Done done && (when == null || fits(when, call, done.outcome()))) {
        ends.add(new Place(called.id(), done.id()));
      }
    }
    return ends;
  }

  private static boolean fits(Condition when, String call, String outcome) {
    return when.match(
        all -> all.parts().stream().allMatch(part -> fits(part, call, outcome)),
        any -> any.parts().stream().anyMatch(part -> fits(part, call, outcome)),
        not -> !speaks(not.part(), call) || !fits(not.part(), call, outcome),
        atom -> !speaks(atom, call) || atom.holds(about -> new Cell.Option(outcome)));
  }

  /** Whether a condition is about the outcome of a call. */
  private static boolean speaks(Condition when, String call) {
    return when instanceof Condition.Chosen chosen && chosen.step().equals(call);
  }

  /**
   * Adds a procedure that is played first where its result is needed. Where it is also called, no
   * edge is added, which would lead from the middle of one job into another.
   */
  private void through(Place begin, Procedure by, boolean called) {
    Place first = new Place(by.id(), by.begin());
    aside.computeIfAbsent(begin, place -> new ArrayList<>()).add(first);
    for (Place end : ends(by, "", null)) {
      aside.computeIfAbsent(end, place -> new ArrayList<>()).add(begin);
      if (!called) {
        add(new Edge(end, begin));
      }
    }
    if (!called) {
      add(new Edge(begin, first));
    }
  }

  private void add(Edge laid) {
    Edge edge = laid.between(canonical(laid.from()), canonical(laid.to()));
    from.computeIfAbsent(edge.from(), p -> new ArrayList<>()).add(edge);
  }

  /** The one object that stands for a place in the edges. */
  Place canonical(Place place) {
    return places.computeIfAbsent(place, p -> p);
  }

  /** Every place that can be reached from a place by ways that are not shut, or by breaks. */
  Set<Place> beyond(Place place, Set<Way> shut) {
    Set<Place> seen = new HashSet<>();
    Deque<Place> open = new ArrayDeque<>(List.of(place));
    while (!open.isEmpty()) {
      Place next = open.pop();
      List<Place> after = new ArrayList<>();
      for (Edge edge : from.getOrDefault(next, List.of())) {
        if (edge.way() == null || !shut.contains(edge.way())) {
          after.add(edge.to());
        }
      }
      after.addAll(aside.getOrDefault(next, List.of()));
      Procedure procedure = library.procedure(next.procedure());
      after.add(new Place(procedure.id(), procedure.retune()));
      after.add(new Place(procedure.id(), procedure.reread()));
      after.stream().filter(seen::add).forEach(open::push);
    }
    return seen;
  }

  /** The edges that begin at a place. */
  List<Edge> from(Place place) {
    return from.getOrDefault(place, List.of());
  }

  /** The edges that begin at one of the graph's own places, but for closed ones. */
  List<Edge> open(Place place) {
    return open.getOrDefault(place, List.of());
  }

  /** Every one of the graph's own places from which open edges lead to an edge of some kind. */
  Set<Place> towards(Predicate<Edge> kind) {
    Set<Place> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Edge> last = new ArrayDeque<>();
    for (Edge edge : passable) {
      if (kind.test(edge)) {
        last.add(edge);
      }
    }
    while (!last.isEmpty()) {
      Place place = last.pop().from();
      if (seen.add(place)) {
        to.getOrDefault(place, List.of()).forEach(last::push);
      }
    }
    return seen;
  }

  /** The step at a place. */
  Step step(Place place) {
    return library.procedure(place.procedure()).step(place.step());
  }

  /** The way that a passage took. */
  Way way(Passage passage) {
    return out(passage.from()).get(passage.way());
  }

  /** The ways out of a place; none out of a question of the engine's own. */
  List<Way> out(Place place) {
    return out.getOrDefault(place, List.of());
  }

  /** Every way of the procedure and those it calls, in the files' order. */
  List<Way> ways() {
    return ways;
  }

  /** Why no session can take a way, or null where one may. */
  @Nullable String closed(Way way) {
    return closed.get(way);
  }

  /** Whether a wanted way can be taken from a place before the next prompt. */
  boolean near(Place place, Set<Way> wanted) {
    Set<Place> seen = new HashSet<>(Set.of(place));
    Deque<Place> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      for (Edge edge : from.getOrDefault(open.pop(), List.of())) {
        if (wanted.contains(edge.way())) {
          return true;
        }
        Step next = step(edge.to());
        boolean silent =
            next instanceof Step.Compute
                || next instanceof Step.Call
                || next instanceof Step.Done
                || next instanceof Step.Adjust;
        if (silent && seen.add(edge.to())) {
          open.push(edge.to());
        }
      }
    }
    return false;
  }
}
