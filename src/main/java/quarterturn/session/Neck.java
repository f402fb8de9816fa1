package quarterturn.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Style;
import quarterturn.unit.Turn;

/**
 * All sessions that are known to be of one neck: those that name the same instrument, and those of
 * which the person said so.
 *
 * @param sessions their records, the oldest first; copies of a session stand beside it
 * @param older the sessions whose records were not read; null where all were
 */
public record Neck(List<SessionRecord> sessions, @Nullable Older older) {
  public static final Neck UNKNOWN = new Neck(List.of());

  public Neck {
    sessions = List.copyOf(sessions);
  }

  /** A neck of which every session was read. */
  public Neck(List<SessionRecord> sessions) {
    this(sessions, null);
  }

  /**
   * Sessions whose records were not read, since one that was read tells what they come to.
   *
   * @param marks what each of them is known again by
   * @param told what that one tells
   */
  public record Older(List<String> marks, Event.Started told) {
    private Event.@Nullable Summed summed() {
      return told.earlier() == null ? null : told.earlier().summed();
    }
  }

  /** This neck, of which the older sessions were not read. */
  public Neck after(Older unread) {
    return new Neck(sessions, unread);
  }

  /** The sessions by their necks. */
  public static List<Neck> of(Collection<SessionRecord> records) {
    Map<String, String> parents = new HashMap<>();
    for (SessionRecord record : records) {
      if (record.instrument() != null) {
        join(parents, session(record.session()), "instrument " + record.instrument());
      }
      record
          .about(answer -> answer == Carried.Answer.SAME)
          .forEach(other -> join(parents, session(record.session()), session(other)));
    }
    Map<String, List<SessionRecord>> necks = new LinkedHashMap<>();
    records.stream()
        .sorted(Comparator.comparing(SessionRecord::began))
        .forEach(
            record ->
                necks
                    .computeIfAbsent(
                        root(parents, session(record.session())), k -> new ArrayList<>())
                    .add(record));
    return necks.values().stream().map(some -> new Neck(some)).toList();
  }

  private static String session(String name) {
    return "session " + name;
  }

  private static void join(Map<String, String> parents, String one, String other) {
    String root = root(parents, one);
    if (!root.equals(root(parents, other))) {
      parents.put(root, root(parents, other));
    }
  }

  private static String root(Map<String, String> parents, String of) {
    String root = of;
    while (parents.containsKey(root)) {
      root = Objects.requireNonNull(parents.get(root));
    }
    return root;
  }

  /**
   * How the player plays, as it was said last of this neck; null where nobody said it.
   *
   * @param styleStep id of the question for it
   */
  public @Nullable Style style(String styleStep) {
    Style style = null;
    for (SessionRecord one : sessions) {
      for (Event event : Corrections.standing(one.events())) {
        if (event instanceof Event.Started started && started.style() != null) {
          style = started.style();
        } else if (event instanceof Event.Chose chose && chose.step().equals(styleStep)) {
          style =
              Arrays.stream(Style.values())
                  .filter(known -> known.word().equals(chose.option()))
                  .findFirst()
                  .orElse(style);
        }
      }
    }
    return style;
  }

  /** The instrument's name, or null where no session has one. */
  public @Nullable String instrument() {
    return sessions.stream()
        .map(SessionRecord::instrument)
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  /** The kind's id as said last, or null. */
  public @Nullable String kind() {
    return sessions.stream()
        .map(SessionRecord::kind)
        .filter(Objects::nonNull)
        .reduce(null, (first, last) -> last);
  }

  public boolean has(String session) {
    return sessions.stream().anyMatch(record -> record.session().equals(session));
  }

  /** This neck together with another that is the same. */
  public Neck and(Neck other) {
    List<SessionRecord> all = new ArrayList<>(sessions);
    all.addAll(other.sessions());
    all.sort(Comparator.comparing(SessionRecord::began));
    return new Neck(all, older == null ? other.older() : older);
  }

  /**
   * The turns of its rod, oldest first, each once, but for those that are {@link #summed}. A turn
   * that only a later session remembers counts where no readable session tells of that time itself,
   * as when its own file is lost.
   */
  public List<Event.Past> turns() {
    return turns(record -> true, Map.of());
  }

  private List<Event.Past> turns(Predicate<SessionRecord> of, Map<String, Instant> cuts) {
    Set<Instant> reported = new HashSet<>();
    sessions.forEach(record -> reported.addAll(record.reported()));
    Map<String, List<Event.Past>> turns = new HashMap<>();
    Map<String, Instant> known = new HashMap<>();
    for (SessionRecord record : sessions) {
      if (of.test(record)) {
        merge(turns, record.turns().stream().filter(t -> after(cuts, record.session(), t.at())));
      }
      for (Event.Past past : record.remembered()) {
        known.merge(key(past), past.when(), (one, other) -> one.isBefore(other) ? one : other);
      }
      if (!cuts.containsKey(record.session())) {
        merge(turns, record.remembered().stream().filter(turn -> !reported.contains(turn.at())));
      }
    }
    Event.Summed summed = older == null ? null : older.summed();
    return turns.values().stream()
        .flatMap(List::stream)
        .filter(turn -> summed == null || turn.at().isAfter(summed.until()))
        .map(turn -> turn.by(known.getOrDefault(key(turn), turn.at())))
        .sorted(Comparator.comparing(Event.Past::at))
        .toList();
  }

  /** Adds one record's turns; of turns alike, the record with the most of them counts. */
  private static void merge(Map<String, List<Event.Past>> turns, Stream<Event.Past> record) {
    Map<String, List<Event.Past>> alike = new LinkedHashMap<>();
    record.forEach(turn -> alike.computeIfAbsent(key(turn), k -> new ArrayList<>()).add(turn));
    alike.forEach((key, some) -> turns.merge(key, some, Neck::fuller));
  }

  private static String key(Event.Past turn) {
    return turn.at() + " " + turn.turn().turns();
  }

  /** The longer of two records of turns alike, or the one with the readings after them. */
  private static List<Event.Past> fuller(List<Event.Past> one, List<Event.Past> other) {
    boolean read = one.stream().anyMatch(turn -> turn.after() != null);
    boolean more = other.size() > one.size() || (other.size() == one.size() && !read);
    return more ? other : one;
  }

  /** Its turns since the rod's place began to count anew, oldest first. */
  public List<Event.Past> counted() {
    return turns(record -> true, cuts());
  }

  /**
   * Its turns before those that are told one by one, as the rod's place counts; null where there
   * are none. Where all sessions were read these are turns of files that are lost, of which a later
   * session tells no more than their sum.
   */
  public Event.@Nullable Summed summed() {
    if (older != null) {
      return older.summed();
    }
    Map<String, Instant> cuts = cuts();
    SessionRecord last =
        Lists.last(sessions, r -> r.summed() != null && !cuts.containsKey(r.session()));
    Event.Summed all = last == null ? null : last.summed();
    if (all == null) {
      return null;
    }
    List<Event.Past> read = new ArrayList<>(counted());
    read.removeIf(turn -> turn.at().isAfter(all.until()));
    int lost = all.turns() - read.size();
    double turned = all.turn().turns() - net(read);
    return lost <= 0 ? null : new Event.Summed(new Turn(turned), lost, all.until());
  }

  /** Those of them that were not made in one session. */
  public Event.@Nullable Summed summedWithout(String session) {
    Event.Summed all = summed();
    if (all == null || older == null) {
      return all;
    }
    List<Event.Past> own = new ArrayList<>();
    sessions.stream()
        .filter(record -> record.session().equals(session))
        .forEach(record -> own.addAll(record.turns()));
    own.removeIf(turn -> turn.at().isAfter(all.until()));
    return new Event.Summed(
        new Turn(all.turn().turns() - net(own)), all.turns() - own.size(), all.until());
  }

  private static double net(List<Event.Past> turns) {
    return turns.stream().mapToDouble(turn -> turn.turn().turns()).sum();
  }

  /** The counted turns that were not made in one session. */
  public List<Event.Past> countedWithout(String session) {
    return turns(record -> !record.session().equals(session), cuts());
  }

  /**
   * When the last lesson that turned its rod began, or the last session where that is no lesson's;
   * null where none did. A session that set another one's turns back is none.
   */
  public @Nullable Instant worked() {
    SessionRecord last =
        Lists.last(sessions, r -> !r.turns().isEmpty() && r.started().back() == null);
    String lesson = last == null ? null : last.started().lesson();
    return lesson == null
        ? last == null ? null : last.began()
        : sessions.stream()
            .filter(r -> lesson.equals(r.started().lesson()))
            .map(SessionRecord::began)
            .min(Comparator.naturalOrder())
            .orElse(null);
  }

  /** What the last lesson or session turned that is not set back yet; plus is tighter. */
  public Turn left() {
    Instant since = worked();
    TurnsLeft left = new TurnsLeft();
    counted().stream()
        .filter(past -> since != null && !past.at().isBefore(since))
        .forEach(past -> left.then(past.turn(), past.before() != null));
    return new Turn(left.turns().stream().mapToDouble(Turn::turns).sum());
  }

  /** The stops that no finding has answered, oldest first. */
  public List<Carried.Stop> stops() {
    Map<String, Instant> cuts = cuts();
    return sessions.stream()
        .flatMap(record -> record.stops().stream())
        .filter(stop -> after(cuts, stop.session(), stop.at()))
        .distinct()
        .sorted(Comparator.comparing(Carried.Stop::at))
        .toList();
  }

  /** The time in each session up to which the rod's place counts no more. */
  private Map<String, Instant> cuts() {
    Map<String, Instant> cuts = new HashMap<>();
    said()
        .filter(one -> one.answer().startsAnew())
        .forEach(one -> cuts.merge(one.about(), one.at(), (a, b) -> a.isAfter(b) ? a : b));
    return cuts;
  }

  private static boolean after(Map<String, Instant> cuts, String session, Instant at) {
    Instant cut = cuts.get(session);
    return cut == null || at.isAfter(cut);
  }

  /**
   * Whether its record bears on a session of a neck that may be this one.
   *
   * @param dayBefore when the day began over which turns are added up
   */
  public boolean counts(Instant dayBefore) {
    Event.Summed summed = summed();
    double net = net(counted()) + (summed == null ? 0 : summed.turn().turns());
    return !stops().isEmpty()
        || new Turn(net).size().atLeast(Turn.SIXTEENTH)
        || turns().stream().anyMatch(turn -> turn.when().isAfter(dayBefore));
  }

  /** The last readings of each quantity and string, with the changes made since. */
  public List<Event.Before> results() {
    return PastResults.of(older == null ? List.of() : older.told().before(), told());
  }

  /** The events of each of its sessions, each session once. */
  public List<List<Event>> told() {
    Map<String, SessionRecord> longest = new LinkedHashMap<>();
    for (SessionRecord record : sessions) {
      longest.merge(
          record.session(),
          record,
          (one, other) -> one.events().size() >= other.events().size() ? one : other);
    }
    return longest.values().stream().map(SessionRecord::events).toList();
  }

  /** When the person did not believe that so much time had gone by as the clock said. */
  public Stream<Instant> doubted() {
    return sessions.stream()
        .flatMap(record -> record.events().stream())
        .filter(
            event -> {
              Carried carried = Carried.of(event);
              return carried != null && carried.doubts(event.at());
            })
        .map(Event::at);
  }

  /** What its sessions say of other records. */
  public Stream<Carried.Said> said() {
    return sessions.stream().flatMap(record -> record.said().stream());
  }

  /** Whether a session of this neck said of a record of that name that it is of another. */
  public boolean disowns(String name) {
    return said().anyMatch(s -> s.answer() == Carried.Answer.ANOTHER && s.about().equals(name));
  }
}
