package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.bench.Detours;
import quarterturn.procedure.condition.Condition;

/**
 * Every way through a procedure: all abstract states in which each of its steps can be reached, the
 * nearest to the beginning first. Breaks are walked too, since the engine then goes back to a
 * reading.
 */
public final class Reachability {
  /** Most states that are walked; a procedure with more breaks a rule of its own. */
  static final int MOST = 100_000;

  private final Frame frame;
  private final Map<String, Fan> fans = new ConcurrentHashMap<>();
  private final Transfer effects;
  private final Calls calls;
  private final InitialState entry;
  private final List<Node> nodes = new ArrayList<>();
  private final List<Wanting> wanting = new ArrayList<>();
  private final Map<String, Fan> expectations = new ConcurrentHashMap<>();
  private final Set<Branched> taken = new HashSet<>();
  private final Map<String, Spot> spots = new HashMap<>();
  private final Detours detours;
  private final @Nullable String undoing;

  /** A state that is used over and over, since most of what is reached was seen before. */
  private final AbstractState reached;

  /** All states in which a step was reached. */
  private record Spot(
      Step step, Forgetting forgetting, Set<AbstractState> seen, List<Node> nodes) {}

  /**
   * A fork that has a hole, or branches that overlap, or too many cases to look at.
   *
   * @param spread what can come of it there
   */
  public record Wanting(Node node, Fan fan, Fan.Spread spread) {}

  /** A branch taken at a step. */
  record Branched(String step, int branch) {}

  /**
   * A step reached in a state.
   *
   * @param from place of the node it was reached from, or -1
   * @param broken whether a break lies between
   */
  public record Node(Step step, AbstractState at, int from, boolean broken) {}

  Reachability(Frame frame, Calls calls) {
    this.frame = frame;
    this.calls = calls;
    this.effects = new Transfer(frame, this::fan, this::spread);
    Liveness live = new Liveness(frame, this::fan);
    this.entry = new InitialState(frame, frame.decided());
    Procedure procedure = frame.procedure();
    this.detours = new Detours(procedure);
    Forgetting.Ahead ahead = Forgetting.Ahead.of(frame, detours);
    for (Step step : procedure.steps().values()) {
      Forgetting forgetting = new Forgetting(frame, live, ahead, step.id());
      spots.put(step.id(), new Spot(step, forgetting, new HashSet<>(), new ArrayList<>()));
    }
    this.reached = new AbstractState(frame.layout(), frame.allMasks());
    this.undoing = detours.undoing();
    reach(procedure.begin(), entry.first(), -1, false);
    for (int i = 0; i < nodes.size() && whole(); i++) {
      expand(i);
    }
  }

  /** Whether every state was walked. */
  public boolean whole() {
    return nodes.size() < MOST;
  }

  List<Node> nodes() {
    return Collections.unmodifiableList(nodes);
  }

  public Frame frame() {
    return frame;
  }

  Transfer effects() {
    return effects;
  }

  /** The fork of a step. */
  public Fan fan(Step step) {
    return fans.computeIfAbsent(step.id(), id -> new Fan(frame, step.fork()));
  }

  /** What a step expects, as a fork with one branch. */
  public Fan expected(Step step, Condition expects) {
    Branch one = new Branch(expects, step.id(), step.mark());
    return expectations.computeIfAbsent(
        step.id(), id -> new Fan(frame, new Branch.Fork(List.of(one), null)));
  }

  /** The forks that were found wanting, where they were reached. */
  public List<Wanting> wanting() {
    return Collections.unmodifiableList(wanting);
  }

  public boolean taken(String step, int branch) {
    return taken.contains(new Branched(step, branch));
  }

  /** The ids of the steps on the shortest way to a node, itself the last. */
  public List<String> way(Node node) {
    List<String> way = new ArrayList<>();
    for (Node at = node; ; at = nodes.get(at.from())) {
      way.add(0, at.step().id());
      if (at.broken()) {
        boolean over = nodes.get(at.from()).step() instanceof Step.Done;
        way.add(0, over ? "(it ends, and is begun once more)" : "(a break)");
      }
      if (at.from() < 0) {
        return way;
      }
    }
  }

  private void reach(String id, AbstractState situation, int from, boolean broken) {
    Spot spot = spots.get(id);
    if (spot == null) {
      return;
    }
    spot.forgetting().reach(situation, reached);
    if (!spot.seen().contains(reached)) {
      AbstractState at = reached.copy();
      spot.seen().add(at);
      Node node = new Node(spot.step(), at, from, broken);
      nodes.add(node);
      spot.nodes().add(node);
    }
  }

  /** The place of the node that is being looked at. */
  private int now;

  private void spread(Fan fan, Fan.Spread spread) {
    if (spread.wanting()) {
      wanting.add(new Wanting(nodes.get(now), fan, spread));
    }
  }

  private void expand(int from) {
    now = from;
    Node node = nodes.get(from);
    Step step = node.step();
    AbstractState at = frame.settled(node.at());
    List<Transfer.Onward> ways =
        step instanceof Step.Call call ? calls.from(this, call, at) : effects.from(step, at);
    for (Transfer.Onward way : ways) {
      taken.add(new Branched(step.id(), way.branch()));
      reach(way.step(), way.at(), from, false);
    }
    if (step instanceof Step.Done) {
      reach(frame.procedure().begin(), entry.again(at), from, true);
    }
    breaks(from, step, at);
  }

  /** Adds the steps at which a session goes on after a break at a step, short or long. */
  private void breaks(int from, Step step, AbstractState at) {
    for (boolean waiting : step instanceof Step.Wait ? BOTH : NEVER) {
      for (boolean drifted : at.has(Fact.AT_PITCH) ? BOTH : NEVER) {
        String to = detours.afterBreak(step, at.bench(), drifted, waiting);
        if (to != null) {
          reach(to, effects.back(at, drifted), from, true);
        } else if (drifted && !(step instanceof Step.Silent)) {
          AbstractState off = at.with(at.bench().offPitch());
          off.sinceTuned(0);
          stay(from, off);
        }
      }
    }
    boolean undoes = step instanceof Step.TurnRod && at.turned() && !at.has(Fact.DETUNED);
    if (undoes && undoing != null) {
      reach(undoing, at, from, false);
    }
  }

  private static final boolean[] BOTH = {false, true};
  private static final boolean[] NEVER = {false};

  /** Adds the state of a step after a long break at it, where pitch does not matter any more. */
  private void stay(int from, AbstractState drifted) {
    Spot spot = spots.get(nodes.get(from).step().id());
    if (spot != null && spot.seen().add(drifted)) {
      Node node = new Node(spot.step(), drifted, from, true);
      nodes.add(node);
      spot.nodes().add(node);
    }
  }

  /** Whether a node is the step before it again, with only a break between. */
  public boolean stayed(Node node) {
    return node.broken() && nodes.get(node.from()).step().equals(node.step());
  }

  /** The nodes at a step, the nearest first; none where it is never reached. */
  public List<Node> at(String step) {
    Spot spot = spots.get(step);
    return spot == null ? List.of() : Collections.unmodifiableList(spot.nodes());
  }

  /** The steps at which the neck may be loose in its pocket. */
  static Set<String> loose(Procedure procedure) {
    List<String> seating = new Detours(procedure).seating();
    Set<String> loose = new HashSet<>();
    for (Step step : procedure.steps().values()) {
      if (step.establishes().contains(Fact.NECK_LOOSE)) {
        for (String next : Ways.from(step)) {
          loose.addAll(Ways.reach(procedure, next, one -> !seating.contains(one.id())));
        }
      }
    }
    return loose;
  }
}
