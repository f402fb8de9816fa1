package quarterturn.session.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.procedure.condition.Quote;
import quarterturn.session.Due;
import quarterturn.session.Event;
import quarterturn.session.listing.Glance;

/** Finds what is due from the store's contents. Pure functions. */
public final class Dues {
  /**
   * Earliest time accepted from a record; times outside the bounds can only come from tampering.
   */
  private static final Instant FIRST = Instant.EPOCH;

  /** The beginning of the year 9999; a text of it would have to be read at every start. */
  private static final Instant LAST = Instant.ofEpochSecond(253_370_764_800L);

  private static final int MOST = 5;

  private Dues() {}

  /**
   * Everything that is due or will be, the soonest first.
   *
   * <p>An unfinished session is due when its wait ends, or now. An instrument with a name that is
   * still kept has re-checks too. One without a name has none, since a later session may have been
   * on another instrument.
   *
   * @param all every session, the newest first, as {@link Store#sessions} lists them
   * @param instruments the names of the instruments that are kept
   * @param rechecks the times of re-checks
   */
  public static List<Due> of(
      List<Glance> all, Set<String> instruments, Limits.Rechecks rechecks, Instant now) {
    List<Glance> sessions = all.stream().filter(Dues::possible).toList();
    List<Due> out = new ArrayList<>();
    // Of those that are due at the same time, the most pressing stays the first.
    Work.of(sessions, Map.of(), now).forEach(work -> out.add(open(work)));
    Map<String, List<Glance>> named = new HashMap<>();
    for (Glance one : sessions) {
      if (one.started() != null && one.instrument() != null) {
        named.computeIfAbsent(one.instrument(), name -> new ArrayList<>()).add(one);
      }
    }
    for (String name : new TreeSet<>(instruments)) {
      List<Glance> of = named.getOrDefault(name, List.of());
      Instant far = now.plus(rechecks.season().after());
      List<Glance> dated = of.stream().filter(g -> !after(g.over(), far)).toList();
      // What a wrong clock dated far ahead tells nothing, unless there is nothing else.
      of = dated.stream().anyMatch(g -> g.over() != null) ? dated : of;
      add(out, bounded(afterTurn(name, of, rechecks), now, far));
      add(out, bounded(season(name, of, rechecks.season()), now, far));
    }
    out.sort(Comparator.comparing(Due::at));
    return List.copyOf(out);
  }

  /** What is to be begun, for the home view: what is overdue, then what is due soon. */
  public static List<Due> pressing(List<Due> dues, Limits.Rechecks rechecks, Instant now) {
    Instant ahead = now.plus(rechecks.ahead());
    return dues.stream().filter(d -> d.resumes() == null && d.come(ahead)).limit(MOST).toList();
  }

  /** A re-check that is no further ahead than its own time, though a clock was wrong. */
  private static @Nullable Due bounded(@Nullable Due due, Instant now, Instant far) {
    return due == null || !due.since().isAfter(far) ? due : due.known(now);
  }

  private static boolean possible(Glance glance) {
    Event.Ended ended = glance.ended();
    return possible(glance.last())
        && possible(glance.waitingUntil())
        && possible(glance.discarded())
        && possible(ended == null ? null : ended.at());
  }

  private static boolean possible(@Nullable Instant at) {
    return at == null || (!at.isBefore(FIRST) && !at.isAfter(LAST));
  }

  private static void add(List<Due> out, @Nullable Due due) {
    if (due != null) {
      out.add(due);
    }
  }

  private static Due open(Work work) {
    Glance glance = work.glance();
    Instant now = work.now();
    String procedure = String.valueOf(glance.procedure());
    Instant until = work.until();
    Instant last = Objects.requireNonNullElse(glance.last(), now);
    String state = Quote.sentence(work.due());
    return new Due(
        until == null ? now : until,
        until == null ? Due.Why.OPEN : Due.Why.WAIT,
        glance.on(),
        procedure,
        glance.name(),
        state + "; go on with " + procedure + ".",
        last);
  }

  /**
   * The re-check after the last session that is over and turned the rod, or null. There is none
   * where the rod was turned again since, or the instrument was handed over.
   */
  private static @Nullable Due afterTurn(String name, List<Glance> of, Limits.Rechecks rechecks) {
    Glance turned = lastOver(of.stream().filter(g -> g.turned() != null).toList());
    Instant end = turned == null ? null : turned.over();
    if (turned == null || end == null || handedOver(turned) != null) {
      return null;
    }
    Instant read = Instant.MIN;
    for (Glance other : of) {
      if (after(other.turned(), end) || after(handedOver(other), end)) {
        return null;
      }
      read = after(other.relief(), read) ? Objects.requireNonNull(other.relief()) : read;
    }
    Limits.Recheck day = rechecks.day();
    Limits.Recheck week = rechecks.week();
    if (read.isBefore(end.plus(day.after().dividedBy(rechecks.answeredAt())))) {
      return due(name, turned, end, Due.Why.DAY, day);
    }
    return read.isBefore(end.plus(week.after().dividedBy(rechecks.answeredAt())))
        ? due(name, turned, end, Due.Why.WEEK, week)
        : null;
  }

  /**
   * The re-check a season after the last session that is over, or null where another began since.
   */
  private static @Nullable Due season(String name, List<Glance> of, Limits.Recheck season) {
    Glance last = lastOver(of);
    Instant end = last == null ? null : last.over();
    if (last == null || end == null) {
      return null;
    }
    boolean later = of.stream().anyMatch(g -> after(g.started(), end));
    return later ? null : due(name, last, end, Due.Why.SEASON, season);
  }

  private static Due due(
      String name, Glance session, Instant end, Due.Why why, Limits.Recheck recheck) {
    return new Due(
        end.plus(recheck.after()),
        why,
        name,
        recheck.procedure(),
        session.name(),
        recheck.due(),
        end);
  }

  private static @Nullable Glance lastOver(List<Glance> of) {
    return of.stream()
        .filter(g -> g.over() != null)
        .max(Comparator.comparing(g -> Objects.requireNonNull(g.over())))
        .orElse(null);
  }

  private static @Nullable Instant handedOver(Glance glance) {
    Event.Ended ended = glance.ended();
    return ended != null && ended.handOver() ? ended.at() : null;
  }

  private static boolean after(@Nullable Instant at, Instant than) {
    return at != null && at.isAfter(than);
  }
}
