package quarterturn.session.engine;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Carried;
import quarterturn.session.Event;

/**
 * What is known of a neck from other sessions.
 *
 * @param summed its turns before those that are told one by one, added up; or null
 * @param earlier its turns before this session, oldest first
 * @param elsewhere its turns in other sessions, first known since this one began
 * @param carried what else they mean; null where the session's record is older than that
 * @param cleared how many of this session's own turns the rod's place counts no more
 * @param since when the lesson or session began whose turns are to be set back, or null
 */
record OtherSessions(
    Event.@Nullable Summed summed,
    List<Event.Past> earlier,
    List<Event.Past> elsewhere,
    @Nullable Carried carried,
    int cleared,
    @Nullable Instant since) {

  static OtherSessions of(Event.Started started) {
    Event.Earlier before = started.earlier();
    return new OtherSessions(
            before == null ? null : before.summed(),
            started.past(),
            List.of(),
            started.carried(),
            0,
            started.back())
        .by(started.at());
  }

  /**
   * After a break.
   *
   * @param own how many turns this session has made
   */
  OtherSessions resumed(Event.Resumed resumed, int own) {
    return after(resumed, own).by(resumed.at());
  }

  private OtherSessions after(Event.Resumed resumed, int own) {
    Carried now = resumed.carried();
    return now == null
        ? new OtherSessions(summed, earlier, resumed.elsewhere(), carried, cleared, since)
        : now.anew()
            ? new OtherSessions(null, List.of(), resumed.elsewhere(), now, own, since)
            : new OtherSessions(summed, earlier, resumed.elsewhere(), now, cleared, since);
  }

  /** These, of which nothing was done later than {@code known}, whatever time a clock showed. */
  private OtherSessions by(Instant known) {
    Event.Summed sum = summed;
    return new OtherSessions(
        sum != null && sum.until().isAfter(known)
            ? new Event.Summed(sum.turn(), sum.turns(), known)
            : sum,
        earlier.stream().map(past -> past.by(known)).toList(),
        elsewhere.stream().map(past -> past.by(known)).toList(),
        carried == null ? null : carried.by(known),
        cleared,
        since);
  }

  private Carried held() {
    return carried == null ? Carried.NOTHING : carried;
  }

  List<Carried.Stop> stops() {
    return held().stops();
  }

  /** Whether the rod was turned in them. */
  boolean turned() {
    return summed != null || !all().isEmpty();
  }

  /** The turns that are known to be of this neck one by one, those before this session first. */
  List<Event.Past> all() {
    List<Event.Past> all = new ArrayList<>(earlier);
    all.addAll(elsewhere);
    return all;
  }

  /** The turns that are to be set back, and those that did so in other sessions. */
  List<Event.Past> lastTime() {
    Instant from = since;
    return from == null
        ? List.of()
        : all().stream().filter(past -> !past.at().isBefore(from)).toList();
  }

  /** The turns whose answers count with this session's towards a hand-over. */
  List<Event.Past> judged() {
    return carried == null ? List.of() : all();
  }

  /** How far they turned the rod, in turns; plus is tighter. */
  double net() {
    // Records without it counted from their own beginning.
    List<Event.Past> counted = carried == null ? elsewhere : judged();
    double sum = summed == null ? 0 : summed.turn().turns();
    return sum + counted.stream().mapToDouble(past -> past.turn().turns()).sum();
  }

  /** How much further turns that may be of this neck may have taken the rod one way. */
  double maybe(boolean tighter) {
    return held().unsure().stream()
        .filter(past -> past.turn().turns() > 0 == tighter)
        .mapToDouble(past -> past.turn().size().turns())
        .sum();
  }

  /** The turns after a time, those included that may be of this neck. */
  List<Event.Past> after(Instant time) {
    List<Event.Past> recent = all();
    recent.addAll(held().unsure());
    recent.addAll(held().day());
    recent.removeIf(past -> !past.when().isAfter(time));
    return recent;
  }

  /** The time of the last turn, unknown ones included, or null. */
  @Nullable Instant last() {
    List<Instant> times = new ArrayList<>();
    after(Instant.MIN).forEach(past -> times.add(past.when()));
    if (summed != null) {
      times.add(summed.until());
    }
    Instant spent = held().spent();
    if (spent != null) {
      times.add(spent);
    }
    return times.stream().max(Comparator.naturalOrder()).orElse(null);
  }

  /** Whether turns that nobody knows of may have been made after a time. */
  boolean spentAfter(Instant time) {
    Instant spent = held().spent();
    return spent != null && spent.isAfter(time);
  }
}
