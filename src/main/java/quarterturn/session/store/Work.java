package quarterturn.session.store;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.session.listing.Glance;
import quarterturn.unit.Dates;
import quarterturn.unit.Worded;

/**
 * An unfinished session, told alike in every list.
 *
 * @param ticket of its instrument, or null
 * @param now when it is looked at
 */
public record Work(Glance glance, @Nullable String ticket, Instant now) {
  /**
   * Those with a turned rod before others, a half-made turn first; what waits after what can go on.
   */
  private static final Comparator<Work> ORDER =
      Comparator.<Work, Boolean>comparing(one -> one.state() != State.HALF_TURN)
          .thenComparing(one -> !one.glance().unread())
          .thenComparing(Work::state)
          .thenComparing(Work::since);

  /** What is to be done about a session. */
  public enum State implements Worded {
    /** A turn of the rod was asked for, and nobody said whether it was made. */
    HALF_TURN,
    /** A wait that is over. */
    READY,
    /** Nothing is waited for. */
    OPEN,
    WAITS
  }

  /**
   * The unfinished among sessions, the most pressing first.
   *
   * @param sessions as the store lists them
   * @param tickets by the names of instruments
   */
  public static List<Work> of(List<Glance> sessions, Map<String, String> tickets, Instant now) {
    return sessions.stream()
        .filter(Glance::unfinished)
        .map(one -> of(one, tickets, now))
        .sorted(ORDER)
        .toList();
  }

  public static Work of(Glance glance, Map<String, String> tickets, Instant now) {
    String instrument = glance.instrument();
    return new Work(glance, instrument == null ? null : tickets.get(instrument), now);
  }

  /**
   * When its wait ends, or null. By a clock that was wrong it began in the future, and counts from
   * now.
   */
  public @Nullable Instant until() {
    Instant until = glance.waitingUntil();
    Instant last = glance.last();
    return until == null || last == null || !last.isAfter(now)
        ? until
        : until.minus(Duration.between(now, last));
  }

  public State state() {
    Instant until = until();
    if (glance.half() != null) {
      return State.HALF_TURN;
    }
    return until == null ? State.OPEN : until.isAfter(now) ? State.WAITS : State.READY;
  }

  /** Whether nothing is waited for. */
  public boolean ready() {
    return state() != State.WAITS;
  }

  /** When its wait ends, or else when it was last worked on. */
  private Instant since() {
    Instant until = until();
    Instant last = glance.last();
    return until != null ? until : last != null ? last : now;
  }

  /** The instrument, with its ticket where it has one: "blue-bass, ticket 4711". */
  public String on() {
    return ticket == null ? glance.on() : glance.on() + ", ticket " + ticket;
  }

  /** In a few words, which is all that a list has room for: "rod turned, 8 minutes left". */
  public String brief() {
    return switch (state()) {
      case HALF_TURN -> "rod turn half made";
      case READY -> rod() + "settled, ready";
      case WAITS -> rod() + left() + " left";
      case OPEN -> {
        String standing = glance.standing();
        // The rest of it stands in the details.
        yield glance.unread()
            ? "rod turned"
            : standing == null ? "broken off" : standing.split(",", 2)[0];
      }
    };
  }

  /** The state in words: "rod turned, waits until 12:14, 8 minutes left". */
  public String words(Dates dates) {
    Instant until = until();
    return until == null || state() != State.WAITS
        ? due()
        : rod() + "waits until " + dates.overSeenFrom(now, until) + ", " + left() + " left";
  }

  /** The state in words once nothing is waited for any more: "rod turned, settled, ready". */
  String due() {
    String standing = glance.standing();
    return switch (state()) {
      case HALF_TURN -> "in the middle of a rod turn";
      case READY, WAITS -> rod() + "settled, ready";
      case OPEN -> standing == null ? rod() + "broken off" : standing;
    };
  }

  private String rod() {
    return glance.unread() ? "rod turned, " : "";
  }

  /** How long it still waits. */
  private String left() {
    Instant until = until();
    return Dates.lasting(Duration.between(now, until == null ? now : until));
  }
}
