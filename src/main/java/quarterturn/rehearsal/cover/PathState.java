package quarterturn.rehearsal.cover;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Step;
import quarterturn.procedure.Way;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Response;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Place;

/**
 * What has happened in a session, or would have happened further down a path: what was chosen, how
 * the rod felt, how often each step was reached. Conditions on the past are met by passing the
 * edges that they need.
 */
final class PathState {
  private final FlowGraph graph;
  private final Map<Place, Integer> reached;
  private final Map<Place, String> chosen;
  private final Map<String, String> ended;
  private @Nullable Feel felt;
  private @Nullable Role role;

  /**
   * Why a condition does not hold.
   *
   * @param mend matches the edges after which it may hold; null where none helps
   * @param pains cost of passing them, higher where the session has to go back
   */
  record Lack(@Nullable Predicate<Edge> mend, int pains) {
    private static final int BACK = 50;

    private static final Lack HOPELESS = new Lack(null, 2 * BACK);
  }

  private PathState(PathState from) {
    this.graph = from.graph;
    this.reached = new HashMap<>(from.reached);
    this.chosen = new HashMap<>(from.chosen);
    this.ended = new HashMap<>(from.ended);
    this.felt = from.felt;
    this.role = from.role;
  }

  /**
   * The state of a session in which nothing happened yet.
   *
   * @param role who is at the bench, or null where any role will do
   */
  PathState(FlowGraph graph, @Nullable Role role) {
    this.graph = graph;
    this.reached = new HashMap<>();
    this.chosen = new HashMap<>();
    this.ended = new HashMap<>();
    this.role = role;
  }

  PathState copy() {
    return new PathState(this);
  }

  /** Records that a step was entered. */
  void enter(Place place) {
    reached.merge(place, 1, Integer::sum);
    if (graph.step(place) instanceof Step.Done done) {
      ended.put(place.procedure(), done.outcome());
    }
  }

  /** Records that a way was taken. */
  void take(Way way) {
    Place place = new Place(way.procedure(), way.step());
    Step step = graph.step(place);
    if (step instanceof Step.Choose) {
      chosen.put(place, way.label());
    }
    if (step instanceof Step.Call call && ended.containsKey(call.procedure())) {
      chosen.put(place, ended.get(call.procedure()));
    }
    if (step instanceof Step.TurnRod) {
      felt = feel(way.label());
    }
  }

  void pass(Edge edge) {
    if (edge.way() != null) {
      take(edge.way());
    }
    enter(edge.to());
  }

  /** The feel of a turn that a way's words name, or null. */
  static @Nullable Feel feel(String word) {
    for (Feel feel : Feel.values()) {
      if (feel.word().equals(word)) {
        return feel;
      }
    }
    return null;
  }

  /** The worst unmet condition of an edge that depends on the past, or null. */
  @Nullable Lack lack(Edge edge) {
    if (!edge.asks()) {
      return null;
    }
    Lack worst = edge.when() == null ? null : lack(edge, edge.when(), true);
    for (Condition before : edge.unless()) {
      worst = worse(worst, lack(edge, before, false));
    }
    return worst;
  }

  /** Whether a condition is about what was chosen, turned or reached before. */
  static boolean asks(Condition.Atom atom) {
    return atom.match(
        new Condition.Atom.Cases<>(
            against -> false,
            leans -> false,
            near -> false,
            below -> false,
            atLeast -> false,
            differs -> false,
            repeats -> false,
            creeps -> false,
            chosen -> true,
            is -> true,
            turned -> false,
            answered -> true,
            strings -> false,
            called -> false,
            seems -> false,
            reached -> true,
            felt -> true));
  }

  private static @Nullable Lack worse(@Nullable Lack one, @Nullable Lack other) {
    return one == null || (other != null && other.mend() == null) ? other : one;
  }

  private @Nullable Lack lack(Edge here, Condition when, boolean holds) {
    String procedure = here.way() == null ? here.from().procedure() : here.way().procedure();
    return when.match(
        all -> holds ? every(here, all.parts(), true) : some(here, all.parts(), false),
        any -> holds ? some(here, any.parts(), true) : every(here, any.parts(), false),
        not -> lack(here, not.part(), !holds),
        atom ->
            atom.match(
                new Condition.Atom.Cases<@Nullable Lack>(
                    against -> null,
                    leans -> null,
                    near -> null,
                    below -> null,
                    atLeast -> null,
                    differs -> null,
                    repeats -> null,
                    creeps -> null,
                    chosen -> choice(here, new Place(procedure, chosen.step()), chosen, holds),
                    is -> role == null || (role == is.role()) == holds ? null : Lack.HOPELESS,
                    turned -> null,
                    answered -> answers(answered, holds),
                    strings -> null,
                    called -> null,
                    seems -> null,
                    reached -> count(new Place(procedure, reached.step()), reached, holds),
                    f ->
                        (felt == f.feel()) == holds
                            ? null
                            : new Lack(edge -> feels(edge, f, holds), 1))));
  }

  private @Nullable Lack choice(Edge here, Place at, Condition.Chosen wanted, boolean holds) {
    // How a call ended is known at its end.
    if (here.way() != null && here.way().step().equals(wanted.step())) {
      return hopeless(chooses(here, at, wanted.options(), holds));
    }
    boolean is = wanted.options().contains(chosen.getOrDefault(at, ""));
    int pains = chosen.containsKey(at) ? Lack.BACK : 1;
    return is == holds ? null : new Lack(edge -> chooses(edge, at, wanted.options(), holds), pains);
  }

  private @Nullable Lack count(Place at, Condition.Reached wanted, boolean holds) {
    int lacking = wanted.times() - reached.getOrDefault(at, 0);
    if (lacking <= 0 == holds) {
      return null;
    }
    return holds ? new Lack(edge -> edge.to().equals(at), lacking) : Lack.HOPELESS;
  }

  private @Nullable Lack every(Edge here, Iterable<Condition> parts, boolean holds) {
    Lack worst = null;
    for (Condition part : parts) {
      worst = worse(worst, lack(here, part, holds));
    }
    return worst;
  }

  private @Nullable Lack some(Edge here, Iterable<Condition> parts, boolean holds) {
    Lack best = Lack.HOPELESS;
    for (Condition part : parts) {
      Lack lack = lack(here, part, holds);
      if (lack == null) {
        return null;
      }
      best = best.mend() == null ? lack : best;
    }
    return best;
  }

  /** What a condition on the neck's answer lacks: a rod turn, unless one was made; or null. */
  private @Nullable Lack answers(Condition.Answered answered, boolean holds) {
    boolean still = answered.response() == Response.NOT_TURNED;
    if (felt != null) {
      return still && holds ? Lack.HOPELESS : null;
    }
    boolean turns = still ? !holds : holds;
    return !turns ? null : new Lack(edge -> graph.step(edge.from()) instanceof Step.TurnRod, 1);
  }

  private static @Nullable Lack hopeless(boolean holds) {
    return holds ? null : Lack.HOPELESS;
  }

  private boolean chooses(Edge edge, Place place, Set<String> options, boolean holds) {
    Way way = edge.way();
    if (way == null || !way.step().equals(place.step())) {
      return false;
    }
    boolean here = way.procedure().equals(place.procedure());
    String label = graph.step(edge.from()) instanceof Step.Done done ? done.outcome() : way.label();
    return here && options.contains(label) == holds;
  }

  private boolean feels(Edge edge, Condition.Felt felt, boolean holds) {
    return edge.way() != null
        && graph.step(edge.from()) instanceof Step.TurnRod
        && felt.feel().word().equals(edge.way().label()) == holds;
  }
}
