package quarterturn.session.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.session.Carried;
import quarterturn.session.Carried.Answer;
import quarterturn.session.Carried.Said;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.session.Neck;
import quarterturn.session.SessionRecord;

/**
 * What other records mean for a session that is about to begin or go on, and what is open about
 * them. Whatever nothing is said of counts against a turn.
 *
 * @param records every session's record
 * @param session the session that goes on, or null for a new one
 * @param instrument its instrument's name, or null
 * @param kind id of its kind, or null where it is yet to be chosen
 * @param now the time
 * @param limits the limits policy
 * @param said what the person said so far
 */
record Opening(
    Records records,
    @Nullable String session,
    @Nullable String instrument,
    @Nullable String kind,
    Instant now,
    Limits limits,
    List<Said> said) {
  /** Outcome of a stop for turns that nobody knows of. */
  static final String UNKNOWN = "unknown-turns";

  /** Outcome of a stop for a rod that was turned as far as allowed. */
  static final String LIMIT = "limit";

  Opening {
    said = List.copyOf(said);
  }

  Opening with(Said one) {
    return new Opening(records, session, instrument, kind, now, limits, Lists.with(said, one));
  }

  Opening ofKind(@Nullable String known) {
    return new Opening(records, session, instrument, known, now, limits, said);
  }

  Opening named(@Nullable String name) {
    return new Opening(records, session, name, kind, now, limits, said);
  }

  Opening with(Records anew) {
    return new Opening(anew, session, instrument, kind, now, limits, said);
  }

  /** All that is known to be of this neck. */
  Neck neck() {
    Neck neck = Neck.UNKNOWN;
    for (Neck one : records.necks()) {
      boolean named = instrument != null && instrument.equals(one.instrument());
      if (named || (session != null && one.has(session)) || saidOf(one, Answer.SAME)) {
        neck = neck.and(one);
      }
    }
    return neck;
  }

  private boolean saidOf(Neck neck, Answer answer) {
    return said.stream().anyMatch(s -> s.answer() == answer && neck.has(s.about()));
  }

  /** The name of the instrument as named, or as the sessions said to be the same have it. */
  @Nullable String named() {
    return instrument != null ? instrument : neck().instrument();
  }

  /** The necks that may be this one, as far as that matters, and of which nothing was said. */
  List<Neck> possible() {
    Neck mine = neck();
    Instant dayBefore = now.minus(limits.day());
    List<Neck> possible = new ArrayList<>();
    for (Neck one : records.necks()) {
      boolean apart = one.instrument() != null && mine.instrument() != null;
      boolean other = kind != null && one.kind() != null && !kind.equals(one.kind());
      boolean answered =
          saidOf(one, Answer.ANOTHER)
              || one.sessions().stream().anyMatch(r -> mine.disowns(r.session()));
      if (!mine.sessions().containsAll(one.sessions())
          && !(apart || (instrument != null && one.instrument() != null))
          && !other
          && !answered
          && one.counts(dayBefore)) {
        possible.add(one);
      }
    }
    return possible;
  }

  /** Whether the person is yet to say which of the possible necks this is. */
  boolean whichOpen() {
    return possible().stream().anyMatch(one -> !saidOf(one, Answer.UNSURE) && news(one));
  }

  /** Whether a neck has a record that is newer than what this session said of it. */
  private boolean news(Neck neck) {
    for (SessionRecord own : neck().sessions()) {
      if (own.session().equals(session)
          && own.about(a -> a == Answer.UNSURE).stream().anyMatch(neck::has)) {
        return neck.sessions().stream().anyMatch(r -> r.last().isAfter(own.last()));
      }
    }
    return true;
  }

  /** The records that may be of this neck and can't be read, and nobody said what is in them. */
  private Stream<Records.Unread> untold() {
    Neck neck = neck();
    return records.unread().stream()
        .filter(one -> one.owner() == null ? mayOwn(one) : neck.has(one.owner().session()))
        .filter(
            one ->
                Stream.concat(neck.said(), said.stream())
                    .noneMatch(s -> s.about().equals(one.file()) && s.answer().settles()));
  }

  /** A neck with a name is asked about once; one without has no memory but the day's. */
  private boolean mayOwn(Records.Unread one) {
    return named() != null || one.at().isAfter(now.minus(limits.day()));
  }

  /** Those of them that still bear on where the rod stands. */
  List<Records.Unread> unread() {
    Instant since = since();
    return untold().filter(one -> since == null || one.at().isAfter(since)).toList();
  }

  /** Those of them of which this session said nothing yet. */
  List<Records.Unread> unreadOpen() {
    return unread().stream()
        .filter(one -> said.stream().noneMatch(s -> s.about().equals(one.file())))
        .toList();
  }

  /** When the rod's place began to count anew, or null. */
  private @Nullable Instant since() {
    return Stream.concat(
            Stream.ofNullable(neck().since()),
            said.stream().filter(s -> s.answer().startsAnew()).map(Said::at))
        .max(Comparator.naturalOrder())
        .orElse(null);
  }

  /** The stops that hold. */
  List<Carried.Stop> stops() {
    Instant since = since();
    List<Carried.Stop> stops = new ArrayList<>(neck().stops());
    possible().forEach(one -> stops.addAll(one.stops()));
    for (Records.Unread one : unread()) {
      stops.add(
          new Carried.Stop(
              one.at(),
              one.file(),
              UNKNOWN,
              "Nobody knows how far the rod was turned, since a record can't be read. "
                  + one.why()));
    }
    stops.removeIf(stop -> since != null && !stop.at().isAfter(since));
    return List.copyOf(stops);
  }

  /** The turns of this neck in other sessions. */
  List<Event.Past> turns() {
    List<Event.Past> turns =
        new ArrayList<>(session == null ? neck().turns() : neck().turnsWithout(session));
    for (Said one : said) {
      if (one.turn() != null && one.turn().turns() != 0) {
        turns.add(new Event.Past(one.at(), one.turn(), null, null));
      }
    }
    turns.sort(Comparator.comparing(Event.Past::at));
    return List.copyOf(turns);
  }

  /** The turns in other sessions that are not among those known already. */
  List<Event.Past> turnsBeside(List<Event.Past> known) {
    List<Event.Past> out = new ArrayList<>(turns());
    // The readings around a turn may have come later, so the turn alone tells it.
    out.removeIf(
        p -> known.stream().anyMatch(k -> p.at().equals(k.at()) && p.turn().equals(k.turn())));
    return List.copyOf(out);
  }

  /** All of it, for the session's own record. */
  Carried carried() {
    Instant day = now.minus(limits.day());
    List<Event.Past> unsure =
        possible().stream()
            .flatMap(one -> Stream.concat(one.counted().stream(), today(one, day)))
            .distinct()
            .sorted(Comparator.comparing(Event.Past::at))
            .toList();
    Instant spent = untold().map(Records.Unread::at).max(Comparator.naturalOrder()).orElse(null);
    return new Carried(since(), stops(), unsure, spent, said);
  }

  private static Stream<Event.Past> today(Neck neck, Instant day) {
    return neck.turns().stream().filter(turn -> turn.at().isAfter(day));
  }
}
