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
 * What has happened in a session, or would have happened further down a road: what was chosen, how
 * the rod felt, how often each step was reached. Conditions on the past are met by passing the
 * pieces of road that they need.
 */
final class PathState {
  private final Roads roads;
  private final Map<Place, Integer> reached;
  private final Map<Place, String> chosen;
  private final Map<String, String> ended;
  private @Nullable Feel felt;
  private @Nullable Role role;

  /**
   * Why a condition does not hold.
   *
   * @param mend matches the pieces of road after which it may hold; null where none helps
   * @param pains cost of passing them, higher where the session has to go back
   */
  record Lack(@Nullable Predicate<Road> mend, int pains) {
    private static final int BACK = 50;

    private static final Lack HOPELESS = new Lack(null, 2 * BACK);
  }

  private PathState(PathState from) {
    this.roads = from.roads;
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
  PathState(Roads roads, @Nullable Role role) {
    this.roads = roads;
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
    if (roads.step(place) instanceof Step.Done done) {
      ended.put(place.procedure(), done.outcome());
    }
  }

  /** Records that a way was taken. */
  void take(Way way) {
    Place place = new Place(way.procedure(), way.step());
    Step step = roads.step(place);
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

  void pass(Road piece) {
    if (piece.way() != null) {
      take(piece.way());
    }
    enter(piece.to());
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

  /** The worst unmet condition of a piece of road that depends on the past, or null. */
  @Nullable Lack lack(Road piece) {
    if (piece.way() == null) {
      return null;
    }
    Lack worst = piece.when() == null ? null : lack(piece, piece.when(), true);
    for (Condition before : piece.unless()) {
      worst = worse(worst, lack(piece, before, false));
    }
    return worst;
  }

  private static @Nullable Lack worse(@Nullable Lack one, @Nullable Lack other) {
    return one == null || (other != null && other.mend() == null) ? other : one;
  }

  private @Nullable Lack lack(Road here, Condition when, boolean holds) {
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
                    below -> null,
                    atLeast -> null,
                    differs -> null,
                    repeats -> null,
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
                            : new Lack(road -> feels(road, f, holds), 1))));
  }

  private @Nullable Lack choice(Road here, Place at, Condition.Chosen wanted, boolean holds) {
    // How a call ended is known at its end.
    if (here.way() != null && here.way().step().equals(wanted.step())) {
      return hopeless(chooses(here, at, wanted.options(), holds));
    }
    boolean is = wanted.options().contains(chosen.getOrDefault(at, ""));
    int pains = chosen.containsKey(at) ? Lack.BACK : 1;
    return is == holds ? null : new Lack(road -> chooses(road, at, wanted.options(), holds), pains);
  }

  private @Nullable Lack count(Place at, Condition.Reached wanted, boolean holds) {
    int lacking = wanted.times() - reached.getOrDefault(at, 0);
    if (lacking <= 0 == holds) {
      return null;
    }
    return holds ? new Lack(road -> road.to().equals(at), lacking) : Lack.HOPELESS;
  }

  private @Nullable Lack every(Road here, Iterable<Condition> parts, boolean holds) {
    Lack worst = null;
    for (Condition part : parts) {
      worst = worse(worst, lack(here, part, holds));
    }
    return worst;
  }

  private @Nullable Lack some(Road here, Iterable<Condition> parts, boolean holds) {
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
    return !turns ? null : new Lack(road -> roads.step(road.from()) instanceof Step.TurnRod, 1);
  }

  private static @Nullable Lack hopeless(boolean holds) {
    return holds ? null : Lack.HOPELESS;
  }

  private boolean chooses(Road road, Place place, Set<String> options, boolean holds) {
    Way way = road.way();
    if (way == null || !way.step().equals(place.step())) {
      return false;
    }
    boolean here = way.procedure().equals(place.procedure());
    String label = roads.step(road.from()) instanceof Step.Done done ? done.outcome() : way.label();
    return here && options.contains(label) == holds;
  }

  private boolean feels(Road road, Condition.Felt felt, boolean holds) {
    return road.way() != null
        && roads.step(road.from()) instanceof Step.TurnRod
        && felt.feel().word().equals(road.way().label()) == holds;
  }
}
