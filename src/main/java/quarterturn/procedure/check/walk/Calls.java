package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.bench.BenchState;
import quarterturn.procedure.bench.Detours;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.kind.Quantity;

/**
 * The effects of calling a procedure, from a walk of its own: which outcomes it can have, and what
 * it leaves of each reading. A procedure takes nothing of its caller's for granted but what it
 * needs.
 */
public final class Calls {
  private final Library library;
  private final Walks walks;
  private final Set<String> walking = new HashSet<>();
  private final Map<String, Reachability> walked = new HashMap<>();
  private final Map<String, Map<String, Left>> left = new HashMap<>();

  /**
   * What a called procedure leaves with one of its outcomes.
   *
   * @param readings the worst freshness of each reading it takes or spoils
   * @param stopped whether the rod may have felt as if it must not be turned again
   */
  private record Left(Map<Quantity, Freshness> readings, boolean stopped) {
    /** What is left where it may be this or that. */
    Left or(Left other) {
      Map<Quantity, Freshness> worst = new EnumMap<>(readings);
      other.readings.forEach(
          (quantity, held) -> worst.merge(quantity, held, (a, b) -> a.compareTo(b) < 0 ? a : b));
      return new Left(worst, stopped || other.stopped);
    }
  }

  public Calls(Library library, Walks walks) {
    this.library = library;
    this.walks = walks;
  }

  /** Every way through a procedure, walked once. */
  public Reachability paths(Procedure procedure) {
    Reachability known = walked.get(procedure.id());
    if (known == null) {
      walking.add(procedure.id());
      known =
          walks.of(library, procedure, () -> new Reachability(new Frame(library, procedure), this));
      walking.remove(procedure.id());
      walked.put(procedure.id(), known);
    }
    return known;
  }

  /** Every way on after a call. */
  List<Transfer.Onward> from(Reachability caller, Step.Call call, AbstractState before) {
    Procedure called = library.procedures().get(call.procedure());
    List<Transfer.Onward> ways = new ArrayList<>();
    if (called == null || walking.contains(called.id())) {
      // A circle of calls; reading the files finds it.
      return ways;
    }
    Frame frame = caller.frame();
    Detours detours = new Detours(frame.procedure());
    Subject ended = new Subject.Choice(call.id());
    boolean turns = library.any(called, Step.TurnRod.class::isInstance);
    boolean tunes = library.any(called, this::tunes);
    left(called)
        .forEach(
            (outcome, what) -> {
              AbstractState now = before.copy();
              if (what.stopped()) {
                now.stop();
              }
              if (tunes) {
                now.bench(now.bench().unknownPitch());
              }
              what.readings().forEach((quantity, held) -> leave(frame, now, quantity, held));
              frame.set(now, ended, frame.where(ended, new Cell.Option(outcome)::equals));
              if (turns) {
                now.dayLeft(false);
                caller.effects().spread(ways, call, now);
                now.bench(now.bench().with(true));
                frame.open(now, new Subject.Neck(), new Subject.Rod(), new Subject.Feeling());
              }
              caller.effects().spread(ways, call, now);
            });
    List<Transfer.Onward> broken = new ArrayList<>();
    for (Transfer.Onward way : ways) {
      // A break in what was called may have cost the pitch.
      BenchState lost = way.at().bench().offPitch();
      String to = detours.afterCall(way.step(), lost);
      broken.add(new Transfer.Onward(to, way.at().with(lost), way.branch()));
    }
    ways.addAll(broken);
    return ways;
  }

  private static void leave(Frame frame, AbstractState now, Quantity quantity, Freshness held) {
    if (quantity == Quantity.RELIEF) {
      now.bench(now.bench().keeping(Set.of()));
    }
    if (held.compareTo(Freshness.STALE) < 0) {
      // Not read there, but spoiled.
      now.bench(now.bench().spoiled(quantity));
      return;
    }
    now.bench(now.bench().with(quantity, held));
    frame.open(
        now,
        new Subject.Reading(quantity),
        new Subject.Each(quantity),
        new Subject.Differing(quantity),
        new Subject.Creeping(quantity),
        new Subject.Repeating(quantity));
  }

  /** What a called procedure leaves, by outcome. */
  private Map<String, Left> left(Procedure called) {
    Map<String, Left> known = left.get(called.id());
    if (known != null) {
      return known;
    }
    Map<String, Left> found = new HashMap<>();
    Reachability paths = paths(called);
    Map<String, Set<Quantity>> touched = touched(called);
    for (Step step : called.steps().values()) {
      if (step instanceof Step.Done done) {
        for (Reachability.Node node : paths.at(step.id())) {
          Map<Quantity, Freshness> readings = new EnumMap<>(Quantity.class);
          touched
              .getOrDefault(step.id(), Set.of())
              .forEach(quantity -> readings.put(quantity, node.at().held(quantity)));
          found.merge(done.outcome(), new Left(readings, node.at().stopped()), Left::or);
        }
      }
    }
    left.put(called.id(), found);
    return found;
  }

  /** The quantities that are read or spoiled on some way to a step, by the steps. */
  private Map<String, Set<Quantity>> touched(Procedure procedure) {
    Map<String, Set<Quantity>> touched = new HashMap<>();
    for (Step step : procedure.steps().values()) {
      for (Quantity quantity : Quantity.values()) {
        Set<String> from =
            step instanceof Step.Call call
                ? touching(call, quantity)
                : reads(step, quantity) || spoils(step, quantity) ? Set.of(step.id()) : Set.of();
        for (String first : from) {
          Ways.reach(procedure, first, any -> true)
              .forEach(
                  id ->
                      touched
                          .computeIfAbsent(id, i -> EnumSet.noneOf(Quantity.class))
                          .add(quantity));
        }
      }
    }
    return touched;
  }

  /** The steps that a call can lead to once what it called has read or spoiled a quantity. */
  private Set<String> touching(Step.Call call, Quantity quantity) {
    Procedure called = library.procedures().get(call.procedure());
    Set<String> steps = new HashSet<>();
    if (called != null && !walking.contains(called.id())) {
      left(called)
          .forEach(
              (outcome, what) -> {
                if (what.readings().containsKey(quantity)) {
                  steps.addAll(Ways.after(call, outcome));
                }
              });
    }
    return steps;
  }

  /** Whether a step can change the pitch of the strings, or let time pass in which it drifts. */
  private boolean tunes(Step step) {
    boolean drifts =
        step instanceof Step.Wait wait && wait.minutes() > library.limits().readingHoldsMinutes();
    return drifts
        || facts(step).stream().anyMatch(TUNING::contains)
        || changes(step).anyMatch(change -> library.results().spoils(change, Results.PITCH));
  }

  private static final Set<Fact> TUNING = Set.of(Fact.AT_PITCH, Fact.DETUNED, Fact.NECK_LOOSE);

  private static Set<Fact> facts(Step step) {
    Set<Fact> facts = EnumSet.noneOf(Fact.class);
    facts.addAll(step.establishes());
    if (step instanceof Step.Choose choose) {
      choose.options().forEach(option -> facts.addAll(option.establishes()));
    }
    return facts;
  }

  private static boolean reads(Step step, Quantity quantity) {
    return step instanceof Step.Measure measure && measure.quantity() == quantity;
  }

  private boolean spoils(Step step, Quantity quantity) {
    return changes(step).anyMatch(change -> library.results().spoils(change, quantity));
  }

  /** The changes that a step can make, whatever is answered. */
  private static Stream<String> changes(Step step) {
    Stream<@Nullable String> changes =
        step instanceof Step.Choose choose
            ? choose.options().stream().map(Step.Option::changes)
            : Stream.of(step.changes());
    return changes.filter(Objects::nonNull);
  }
}
