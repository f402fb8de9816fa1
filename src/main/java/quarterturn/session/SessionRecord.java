package quarterturn.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.procedure.condition.Feel;

/**
 * What the readable part of one session's file says for other sessions.
 *
 * @param session the session's own name, which copies of its file share
 * @param instrument its name, or null
 * @param kind id of its kind, or null where none was chosen
 * @param turns of the rod, oldest first, with what was said of turns in records that can't be read
 * @param remembered turns from earlier sessions on the same neck, as known when this one began
 * @param reported when a turn was asked for or reported, even where that was withdrawn later
 * @param stops reasons not to turn the rod again, in this session and before it
 * @param said what the person said of other records
 * @param events all of them, oldest first, at least one
 */
public record SessionRecord(
    String session,
    @Nullable String instrument,
    @Nullable String kind,
    List<Event.Past> turns,
    List<Event.Past> remembered,
    Set<Instant> reported,
    List<Carried.Stop> stops,
    List<Carried.Said> said,
    List<Event> events) {

  /**
   * The record of a session; null where not even its start can be read.
   *
   * @param kindStep id of the question for the kind
   */
  public static @Nullable SessionRecord of(
      String session, List<Event> events, Limits limits, String kindStep) {
    if (events.isEmpty() || !(events.get(0) instanceof Event.Started started)) {
      return null;
    }
    List<Event> standing = Corrections.standing(events);
    List<Carried.Said> said = new ArrayList<>();
    List<Event.Past> remembered = new ArrayList<>();
    started.past().forEach(past -> remembered.add(past.by(started.at())));
    List<Carried.Stop> stops = new ArrayList<>();
    boolean held = false;
    Set<Instant> reported = new HashSet<>();
    for (Event event : events) {
      Carried carried = Carried.of(event);
      if (carried != null) {
        said.addAll(carried.said());
        stops.addAll(carried.stops());
        held = !carried.stops().isEmpty();
      }
      if (event instanceof Event.Resumed resumed) {
        // Each break tells all that came since the start once more.
        List<Event.Past> more = new ArrayList<>(resumed.elsewhere());
        remembered.forEach(known -> removeOne(more, known));
        more.forEach(past -> remembered.add(past.by(resumed.at())));
      } else if (event instanceof Event.OnRod || event instanceof Event.Offered) {
        reported.add(event.at());
      }
    }
    List<Event.Past> turns = new ArrayList<>(PastTurns.of(events));
    for (Carried.Said one : said) {
      if (one.turn() != null && one.turn().turns() != 0) {
        turns.add(new Event.Past(one.at(), one.turn(), null, null));
      }
    }
    turns.sort(Comparator.comparing(Event.Past::at));
    boolean sure = said.stream().noneMatch(s -> s.answer() == Carried.Answer.UNSURE);
    return new SessionRecord(
        session,
        started.instrument(),
        kind(started, standing, kindStep),
        List.copyOf(turns),
        sure ? List.copyOf(remembered) : List.of(),
        Set.copyOf(reported),
        stops(session, standing, limits, sure ? stops : List.of(), held),
        List.copyOf(said),
        List.copyOf(events));
  }

  private static void removeOne(List<Event.Past> turns, Event.Past known) {
    turns.stream()
        .filter(turn -> turn.at().equals(known.at()) && turn.turn().equals(known.turn()))
        .findFirst()
        .ifPresent(turns::remove);
  }

  private static @Nullable String kind(
      Event.Started started, List<Event> standing, String kindStep) {
    String kind = started.kind();
    for (Event event : standing) {
      if (event instanceof Event.Chose chose && chose.step().equals(kindStep)) {
        kind = chose.option();
      }
    }
    return kind;
  }

  /**
   * The stops that the session met, after those of other sessions that it remembers.
   *
   * @param held whether it ended for a stop of another session, which is no stop of its own
   */
  private static List<Carried.Stop> stops(
      String session,
      List<Event> standing,
      Limits limits,
      List<Carried.Stop> remembered,
      boolean held) {
    List<Carried.Stop> stops = new ArrayList<>(remembered);
    stops.removeIf(stop -> !limits.findingNeeded().contains(stop.outcome()));
    for (Event event : standing) {
      Feel feel = event instanceof Event.OnRod rod ? rod.feel() : null;
      if (feel != null && limits.stopFeels().contains(feel)) {
        stops.add(new Carried.Stop(event.at(), session, feel.word(), feel.label() + "."));
      } else if (!held
          && event instanceof Event.Ended ended
          && ended.handOver()
          && limits.findingNeeded().contains(ended.outcome())) {
        stops.add(new Carried.Stop(ended.at(), session, ended.outcome(), ended.why()));
      }
    }
    return List.copyOf(stops);
  }

  /** When the session began. */
  public Instant began() {
    return events.get(0).at();
  }

  /** Its first event, without which there is no record. */
  public Event.Started started() {
    return (Event.Started) events.get(0);
  }

  /** The latest time of its events; of the last one, unless the clock was set back. */
  public Instant last() {
    return events.stream().map(Event::at).max(Comparator.naturalOrder()).orElseThrow();
  }

  /** The records of which something was said that fits. */
  public List<String> about(Predicate<Carried.Answer> fits) {
    return said.stream().filter(s -> fits.test(s.answer())).map(Carried.Said::about).toList();
  }

  /** The turns of this neck that were added up when it began; null where there are none. */
  Event.@Nullable Summed summed() {
    Event.Earlier earlier = started().earlier();
    return earlier == null || !about(a -> a == Carried.Answer.UNSURE).isEmpty()
        ? null
        : earlier.summed();
  }
}
