package quarterturn.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Turn;

/**
 * All sessions that are known to be of one neck: those that name the same instrument, and those of
 * which the person said so.
 *
 * @param sessions their records, the oldest first; copies of a session stand beside it
 */
public record Neck(List<SessionRecord> sessions) {
  public static final Neck UNKNOWN = new Neck(List.of());

  public Neck {
    sessions = List.copyOf(sessions);
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
    return necks.values().stream().map(Neck::new).toList();
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
    return new Neck(all);
  }

  /**
   * The turns of its rod, oldest first, each once. A turn that only a later session remembers
   * counts where no readable session tells of that time itself, as when its own file is lost.
   */
  public List<Event.Past> turns() {
    return turnsWithout("");
  }

  /** Its turns that were not made in one session. */
  public List<Event.Past> turnsWithout(String session) {
    Map<String, Event.Past> turns = new TreeMap<>();
    Set<Instant> reported = new HashSet<>();
    Set<String> own = new HashSet<>();
    for (SessionRecord record : sessions) {
      reported.addAll(record.reported());
      if (record.session().equals(session)) {
        record.turns().forEach(turn -> own.add(key(turn)));
      } else {
        record.turns().forEach(turn -> turns.merge(key(turn), turn, Neck::fuller));
      }
    }
    for (SessionRecord record : sessions) {
      record.remembered().stream()
          .filter(turn -> !reported.contains(turn.at()))
          .forEach(turn -> turns.merge(key(turn), turn, Neck::fuller));
    }
    own.forEach(turns::remove);
    return turns.values().stream().sorted(Comparator.comparing(Event.Past::at)).toList();
  }

  private static String key(Event.Past turn) {
    return turn.at() + " " + turn.turn().turns();
  }

  /** The one of two records of a turn that has the readings around it. */
  private static Event.Past fuller(Event.Past one, Event.Past other) {
    return one.after() == null && other.after() != null ? other : one;
  }

  /** When the rod's place last began to count anew, or null. */
  public @Nullable Instant since() {
    return sessions.stream()
        .map(SessionRecord::since)
        .filter(Objects::nonNull)
        .max(Comparator.naturalOrder())
        .orElse(null);
  }

  /** The stops that no finding has answered, oldest first. */
  public List<Carried.Stop> stops() {
    Instant since = since();
    return sessions.stream()
        .flatMap(record -> record.stops().stream())
        .filter(stop -> since == null || stop.at().isAfter(since))
        .distinct()
        .sorted(Comparator.comparing(Carried.Stop::at))
        .toList();
  }

  /** Its turns since the rod's place began to count anew. */
  public List<Event.Past> counted() {
    Instant since = since();
    return turns().stream().filter(turn -> since == null || turn.at().isAfter(since)).toList();
  }

  /** Whether its record can bear on a session at {@code now}. */
  public boolean counts(Instant dayBefore) {
    double net = counted().stream().mapToDouble(turn -> turn.turn().turns()).sum();
    return !stops().isEmpty()
        || new Turn(net).size().atLeast(Turn.SIXTEENTH)
        || turns().stream().anyMatch(turn -> turn.at().isAfter(dayBefore));
  }

  /** The last readings of each quantity and string, with the changes made since. */
  public List<Event.Before> results() {
    Map<String, SessionRecord> longest = new LinkedHashMap<>();
    for (SessionRecord record : sessions) {
      longest.merge(
          record.session(),
          record,
          (one, other) -> one.events().size() >= other.events().size() ? one : other);
    }
    return PastResults.of(longest.values().stream().map(SessionRecord::events).toList());
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
