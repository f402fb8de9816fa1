package quarterturn.session.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
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
import quarterturn.session.clock.ClockDoubt;
import quarterturn.session.journal.LogFormat;

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

  private static final String NOBODY_KNOWS =
      "Nobody knows how far the rod was turned, since a record can't be read. ";

  /** Outcome of a stop for a rod that was turned as far as allowed. */
  static final String LIMIT = "limit";

  Opening {
    said = List.copyOf(said);
  }

  Opening with(Said one) {
    return new Opening(records, session, instrument, kind, now, limits, Lists.with(said, one));
  }

  Opening with(List<Said> more) {
    List<Said> all = new ArrayList<>(said);
    all.addAll(more);
    return new Opening(records, session, instrument, kind, now, limits, all);
  }

  Opening ofKind(@Nullable String known) {
    return new Opening(records, session, instrument, known, now, limits, said);
  }

  Opening named(@Nullable String name) {
    return new Opening(records, session, name, kind, now, limits, said);
  }

  /**
   * With the records as they stand now. What was lost before stays so, though a file's end is
   * mended when it is opened.
   */
  Opening with(Records anew) {
    List<Records.Unread> unread = new ArrayList<>(anew.unread());
    for (Records.Unread one : records.unread()) {
      if (unread.stream().noneMatch(other -> other.file().equals(one.file()))) {
        unread.add(one);
      }
    }
    Records all = new Records(anew.necks(), unread, anew.entries());
    return new Opening(all, session, instrument, kind, now, limits, said);
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

  /**
   * The sessions whose times are believed.
   *
   * @param own whether only those that may be of this neck
   */
  List<ClockDoubt.Dated> dated(boolean own) {
    List<Neck> necks = new ArrayList<>(possible());
    necks.add(neck());
    List<Said> all =
        Stream.concat(records.necks().stream().flatMap(Neck::said), said.stream()).toList();
    return records.entries().stream()
        .flatMap(entry -> Stream.ofNullable(entry.dated()))
        .filter(one -> !own || necks.stream().anyMatch(neck -> neck.has(one.session())))
        .filter(one -> !one.disowned(all))
        .toList();
  }

  /** Whether the session that goes on was left in a wait that was not over at a time. */
  boolean waits(Instant at) {
    return neck().sessions().stream()
        .filter(one -> one.session().equals(session))
        .anyMatch(one -> ClockDoubt.waits(one.events(), at));
  }

  /** Whether the rod was turned in the day up to a time, or later. */
  boolean turned(Instant at) {
    Instant from = at.minus(limits.day());
    return neck().turns().stream().anyMatch(turn -> turn.when().isAfter(from));
  }

  /** Whether the person did not believe that so much time had gone by. */
  private boolean doubts() {
    return new Carried(List.of(), List.of(), List.of(), null, said).doubts(now);
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
          && (one.counts(dayBefore) || lostOf(one))) {
        possible.add(one);
      }
    }
    return possible;
  }

  /** Whether a part of a neck's records can't be read, and its sessions don't say what is in it. */
  private boolean lostOf(Neck neck) {
    return records.unread().stream()
        .filter(one -> one.owner() != null && neck.has(one.owner().session()))
        .anyMatch(
            one ->
                neck.said().noneMatch(s -> s.about().equals(one.file()) && s.answer().settles()));
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

  /** The records that may be of this neck and can't be read; whose they are may be unknown. */
  private Stream<Records.Unread> lost() {
    List<Neck> necks = new ArrayList<>(possible());
    necks.add(neck());
    Stream<Records.Unread> now =
        records.unread().stream()
            .filter(
                one -> {
                  SessionRecord owner = one.owner();
                  return owner == null || necks.stream().anyMatch(n -> n.has(owner.session()));
                });
    return Stream.concat(now, doubted())
        .filter(one -> saidOf(one, a -> a == Answer.ANOTHER || a == Answer.TURNED).isEmpty());
  }

  /** Records that nobody could tell of before, and that were mended or are gone since. */
  private Stream<Records.Unread> doubted() {
    return neck()
        .said()
        .filter(s -> s.answer() == Answer.UNSURE && s.about().contains(LogFormat.ENDING))
        .filter(s -> records.unread().stream().noneMatch(one -> one.file().equals(s.about())))
        .map(s -> new Records.Unread(s.about(), null, s.at(), "It could not be read before."))
        .distinct();
  }

  /** Those of them of whose turns nobody said what would let the rod's place be known. */
  private Stream<Records.Unread> untold() {
    return lost().filter(one -> saidOf(one, Answer::startsAnew).isEmpty());
  }

  /** What was ever said of a record, up to the time of what is lost in it. */
  private List<Said> saidOf(Records.Unread one, Predicate<Answer> answer) {
    return Stream.concat(neck().said(), said.stream())
        .filter(s -> s.about().equals(one.file()) && answer.test(s.answer()))
        .filter(s -> !one.at().isAfter(s.at()))
        .toList();
  }

  /** Those of them of which this session said nothing yet. */
  List<Records.Unread> unreadOpen() {
    return untold()
        .filter(one -> said.stream().noneMatch(s -> s.about().equals(one.file())))
        .toList();
  }

  /** The stops that hold. */
  List<Carried.Stop> stops() {
    List<Carried.Stop> stops = new ArrayList<>(neck().stops());
    possible().forEach(one -> stops.addAll(one.stops()));
    untold()
        .map(one -> new Carried.Stop(one.at(), one.file(), UNKNOWN, NOBODY_KNOWS + one.why()))
        .forEach(stops::add);
    stops.removeIf(stop -> said.stream().anyMatch(s -> answers(s, stop)));
    return List.copyOf(stops);
  }

  private static boolean answers(Said said, Carried.Stop stop) {
    return said.answer().startsAnew()
        && said.about().equals(stop.session())
        && !stop.at().isAfter(said.at());
  }

  /** Whether the person said that the rod's place counts from here on. */
  private boolean anew() {
    return said.stream().anyMatch(one -> one.answer().startsAnew());
  }

  /** This with a finding or a new start, said of everything that is on record so far. */
  Opening anew(Answer answer, String words) {
    List<Said> more = new ArrayList<>();
    Stream.concat(Stream.of(neck()), possible().stream())
        .flatMap(one -> one.sessions().stream())
        .forEach(r -> more.add(new Said(r.last(), r.session(), answer, null, words)));
    untold().forEach(one -> more.add(new Said(one.at(), one.file(), answer, null, words)));
    Opening now = this;
    for (Said one : more) {
      now = now.with(one);
    }
    return now;
  }

  /**
   * The turns of this neck in other sessions by which the rod's place and its answers count: the
   * last of them, where {@link #earlier} adds up those before.
   */
  List<Event.Past> turns() {
    return told().listed();
  }

  /** What else is on record of an instrument with a name; null for one without. */
  Event.@Nullable Earlier earlier() {
    if (instrument == null) {
      return null;
    }
    Neck neck = neck();
    List<String> marks = new ArrayList<>(neck.older() == null ? List.of() : neck.older().marks());
    neck.sessions().forEach(one -> marks.add(Bearing.mark(one.session(), one.events())));
    return new Event.Earlier(marks.size(), Bearing.sum(marks), told().summed());
  }

  private TurnsTold told() {
    Event.Summed before = anew() ? null : summed();
    return instrument == null
        ? new TurnsTold(null, all())
        : TurnsTold.of(before, all(), now.minus(limits.day()), neck().worked());
  }

  private Event.@Nullable Summed summed() {
    return session == null ? neck().summed() : neck().summedWithout(session);
  }

  /** Every turn in other sessions that is told by itself. */
  private List<Event.Past> all() {
    if (anew()) {
      return List.of();
    }
    List<Event.Past> turns =
        new ArrayList<>(session == null ? neck().counted() : neck().countedWithout(session));
    for (Said one : said) {
      if (one.turn() != null && one.turn().turns() != 0) {
        turns.add(new Event.Past(one.at(), one.turn(), null, null));
      }
    }
    turns.sort(Comparator.comparing(Event.Past::at));
    return List.copyOf(turns);
  }

  /** The turns in other sessions that a session's start does not tell of. */
  List<Event.Past> turnsBeside(Event.Started start) {
    return anew() ? List.of() : TurnsTold.beside(start, new TurnsTold(summed(), all()));
  }

  /** All of it, for the session's own record. */
  Carried carried() {
    Instant dayBefore = now.minus(limits.day());
    List<Event.Past> unsure = new ArrayList<>();
    List<Event.Past> day = recent(neck(), dayBefore);
    for (Neck one : possible()) {
      if (anew()) {
        day.addAll(recent(one, dayBefore));
      } else {
        unsure.addAll(counted(one));
        List<Event.Past> cleared = recent(one, dayBefore);
        cleared.removeAll(one.counted());
        day.addAll(cleared);
      }
    }
    day.removeAll(all());
    if (session != null) {
      neck().sessions().stream()
          .filter(r -> r.session().equals(session))
          .forEach(r -> day.removeAll(r.turns()));
    }
    Stream<Instant> doubted = doubts() ? Stream.of(now) : neck().doubted();
    Instant spent =
        Stream.concat(lost().map(Records.Unread::at), doubted)
            .max(Comparator.naturalOrder())
            .orElse(null);
    return new Carried(stops(), unsure, day, spent, said);
  }

  /** A neck's counted turns, those that are added up as one. */
  private static List<Event.Past> counted(Neck neck) {
    Event.Summed summed = neck.summed();
    return summed == null
        ? neck.counted()
        : Lists.with(neck.counted(), new Event.Past(summed.until(), summed.turn(), null, null));
  }

  private static List<Event.Past> recent(Neck neck, Instant dayBefore) {
    List<Event.Past> recent = new ArrayList<>(neck.turns());
    recent.removeIf(turn -> !turn.when().isAfter(dayBefore));
    return recent;
  }
}
