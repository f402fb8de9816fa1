package quarterturn.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Facts;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Style;

/**
 * What a session's events add up to. Never changed after {@link Fold} has made it; package-private
 * fields, because it is plain data shared by the engine's parts.
 */
final class State {
  final Event.Started started;
  final Instant last;
  @Nullable String kind;
  @Nullable Style style;

  /** Callers first, the present step last. */
  List<Place> places = List.of();

  Map<String, Integer> reached = Map.of();

  /** Every step entered, in order, those that ask nothing included. */
  List<Place> path = List.of();

  /** Every way taken, in order; where a break or a limit moved the session on, there is none. */
  List<Passage> passages = List.of();

  Map<String, String> chosen = Map.of();
  List<Reading> readings = List.of();
  List<TurnMade> turns = List.of();

  /** What was done to the instrument, rod turns included. */
  List<Changed> changes = List.of();

  /** Verdicts that were given, each with how many changes had been made by then. */
  Map<String, Integer> given = Map.of();

  /** Which string a step that goes from string to string has come to; 0 is the lowest. */
  int string;

  /** Which line of a pause is asked for; 0 is the first. */
  int line;

  /** The procedure that goes step by step since a reading in it was doubtful, or null. */
  @Nullable String stepwise;

  /** Why the session goes no further, where what it needs is not taken anew; or null. */
  @Nullable String refused;

  /** Whether the present procedure is still to be entered, and may lack something. */
  boolean entering;

  /** Turns made on this neck in other sessions since this one began. */
  List<Event.Past> elsewhere = List.of();

  Set<Fact> facts = Set.of();
  Set<String> accepted = Set.of();

  Event.@Nullable Offered open;
  boolean undoAsked;

  /** Whether the person is to say if the turn that was offered before a break was made. */
  boolean recalling;

  Event.@Nullable WaitBegan waiting;
  @Nullable Instant atPitchSince;
  @Nullable Lifted lifted;

  /** How often in a row a turn was put off for want of a fresh reading. */
  int putOff;

  @Nullable Break away;
  @Nullable String fault;
  Event.@Nullable Ended ended;
  List<Event> log = List.of();

  /** The state before the last answer, for a correction; null where it can't be taken back. */
  @Nullable State beforeAnswer;

  State(Event.Started started) {
    this.started = started;
    this.last = started.at();
    this.kind = started.kind();
    this.style = started.style();
  }

  private State(State from, Instant last) {
    this.started = from.started;
    this.last = last;
    this.kind = from.kind;
    this.style = from.style;
    this.places = from.places;
    this.reached = from.reached;
    this.path = from.path;
    this.passages = from.passages;
    this.chosen = from.chosen;
    this.readings = from.readings;
    this.turns = from.turns;
    this.changes = from.changes;
    this.given = from.given;
    this.string = from.string;
    this.line = from.line;
    this.stepwise = from.stepwise;
    this.entering = from.entering;
    this.refused = from.refused;
    this.elsewhere = from.elsewhere;
    this.facts = from.facts;
    this.accepted = from.accepted;
    this.open = from.open;
    this.undoAsked = from.undoAsked;
    this.recalling = from.recalling;
    this.waiting = from.waiting;
    this.atPitchSince = from.atPitchSince;
    this.lifted = from.lifted;
    this.putOff = from.putOff;
    this.away = from.away;
    this.fault = from.fault;
    this.ended = from.ended;
    this.log = from.log;
    this.beforeAnswer = from.beforeAnswer;
  }

  /**
   * A break that was just ended.
   *
   * @param left when the person left, or the last thing that happened before a crash
   * @param standing in what state the instrument was left
   * @param stale whether a fresh reading was spoiled by it
   */
  record Break(Instant left, Instant back, String standing, boolean stale) {}

  /**
   * The daily rest was lifted with a reason.
   *
   * @param turns how many rod turns had been made in this session by then
   */
  record Lifted(Instant at, int turns) {}

  /** A copy to be changed while folding. */
  State copy(Instant at) {
    return new State(this, at);
  }

  /** Whether the last answer, or the turn that is asked for now, can be taken back. */
  boolean correctable() {
    return !recalling && (open != null || beforeAnswer != null);
  }

  Place place() {
    return places.get(places.size() - 1);
  }

  /** Moves the present step. */
  void move(Place to) {
    List<Place> moved = new ArrayList<>(places.subList(0, places.size() - 1));
    moved.add(to);
    places = List.copyOf(moved);
  }

  void establish(Set<Fact> established, Instant at) {
    facts = Facts.with(facts, established);
    if (established.contains(Fact.AT_PITCH) && facts.contains(Fact.AT_PITCH)) {
      atPitchSince = at;
    }
    if (established.contains(Fact.NECK_FAST)) {
      // Seated anew, the neck need not come back to what was read.
      spoil();
    }
  }

  void withdraw(Fact... withdrawn) {
    HashSet<Fact> now = new HashSet<>(facts);
    now.removeAll(List.of(withdrawn));
    facts = Set.copyOf(now);
  }

  /** Makes every reading stale. */
  void spoil() {
    readings = readings.stream().map(Reading::spoiled).toList();
  }

  /** Makes every reading of one quantity stale. */
  void spoil(Quantity quantity) {
    readings =
        readings.stream().map(r -> r.read().quantity() == quantity ? r.spoiled() : r).toList();
  }

  <K, V> Map<K, V> with(Map<K, V> map, K key, V value) {
    HashMap<K, V> now = new HashMap<>(map);
    now.put(key, value);
    return Map.copyOf(now);
  }

  <T> List<T> with(List<T> list, T value) {
    ArrayList<T> now = new ArrayList<>(list);
    now.add(value);
    return List.copyOf(now);
  }

  <T> Set<T> with(Set<T> set, T value) {
    HashSet<T> now = new HashSet<>(set);
    now.add(value);
    return Set.copyOf(now);
  }
}
