package quarterturn.unit;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Prints times for people: in their own time zone, to the minute. */
public record Dates(ZoneId zone) {
  private static final DateTimeFormatter OVER =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu, HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** A date: "2027-03-01". */
  public String day(Instant at) {
    return at.atZone(zone).toLocalDate().toString();
  }

  /** A date and time: "2027-03-01 10:05". */
  public String minute(Instant at) {
    LocalDateTime time = LocalDateTime.ofInstant(at, zone);
    // By hand, since long lists are made of them: a formatter takes ten times as long.
    return time.toLocalDate()
        + (time.getHour() < 10 ? " 0" : " ")
        + time.getHour()
        + (time.getMinute() < 10 ? ":0" : ":")
        + time.getMinute();
  }

  /** A time of day: "10:05". */
  public String clock(Instant at) {
    return CLOCK.format(at.atZone(zone));
  }

  /** The day and time when something is over, never before it is: "Monday 1 March 2027, 10:05". */
  public String over(Instant at) {
    return OVER.format(at.plusSeconds(59).atZone(zone)) + which(at.plusSeconds(59));
  }

  /** A time of day, "10:05", with its date unless {@code at} is on the same day as {@code now}. */
  public String seenFrom(Instant now, Instant at) {
    LocalDate today = now.atZone(zone).toLocalDate();
    boolean sameDay = at.atZone(zone).toLocalDate().equals(today);
    return sameDay ? CLOCK.format(at.atZone(zone)) : minute(at);
  }

  /** The time when something is over, never before it is, as {@link #seenFrom} prints it. */
  public String overSeenFrom(Instant now, Instant at) {
    return seenFrom(now, at.plusSeconds(59)) + which(at.plusSeconds(59));
  }

  /** Which time of two alike it is, where the clocks are set back that night; else empty. */
  private String which(Instant at) {
    LocalDateTime shown = LocalDateTime.ofInstant(at, zone);
    ZoneOffset first = zone.getRules().getOffset(shown);
    boolean twice = zone.getRules().getValidOffsets(shown).size() > 1;
    return !twice
        ? ""
        : shown.toInstant(first).equals(at) ? ", the first time" : ", the second time";
  }

  /**
   * A time relative to {@code now}: "now", "in 23 hours (2027-03-02 10:05)", "2 days ago (10:05)".
   */
  public String toOrFrom(Instant now, Instant at) {
    Duration to = Duration.between(now, at);
    if (to.abs().toSeconds() < 60) {
      return "now";
    }
    String lasting = lasting(to.abs());
    // What is to come is rounded up in both, so that it has come when the time is there.
    return to.isNegative()
        ? lasting + " ago (" + seenFrom(now, at) + ")"
        : "in " + lasting + " (" + overSeenFrom(now, at) + ")";
  }

  /** A duration, rounded up to the minute: "10 minutes", "1 hour 30 minutes", "3 days 2 hours". */
  public static String lasting(Duration length) {
    long minutes = Math.max(0, (length.toSeconds() + 59) / 60);
    if (minutes < 60) {
      return Counted.of(minutes, "minute");
    }
    long hours = minutes / 60;
    if (hours < 48) {
      return join(Counted.of(hours, "hour"), minutes % 60, "minute");
    }
    return join(Counted.of(hours / 24, "day"), hours % 24, "hour");
  }

  private static String join(String whole, long rest, String word) {
    return rest == 0 ? whole : whole + " " + Counted.of(rest, word);
  }
}
