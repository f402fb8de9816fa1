package quarterturn.session;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Turn;
import quarterturn.unit.Worded;

/**
 * What other sessions' records mean for one that begins or goes on, beside the turns that are known
 * to be of its neck.
 *
 * @param stops reasons not to turn the rod until a repairer's finding is on record
 * @param unsure turns on a neck that may be this one
 * @param day recent turns before the rod's place began to count anew, which count for the day alone
 * @param spent the latest time at which unknown turns may have been made, or null; the day's turns
 *     count as used up then
 * @param said what the person said about other records before this session began or went on
 */
public record Carried(
    List<Stop> stops,
    List<Event.Past> unsure,
    List<Event.Past> day,
    @Nullable Instant spent,
    List<Said> said) {
  public static final Carried NOTHING =
      new Carried(List.of(), List.of(), List.of(), null, List.of());

  public Carried {
    stops = List.copyOf(stops);
    unsure = List.copyOf(unsure);
    day = List.copyOf(day);
    said = List.copyOf(said);
  }

  /** What an event says of other sessions' records; null where it says nothing of them. */
  public static @Nullable Carried of(Event event) {
    return event instanceof Event.Started started
        ? started.carried()
        : event instanceof Event.Resumed resumed ? resumed.carried() : null;
  }

  /** This, of which nothing was done later than {@code known}, whatever time a clock showed. */
  public Carried by(Instant known) {
    return new Carried(
        stops,
        unsure.stream().map(past -> past.by(known)).toList(),
        day.stream().map(past -> past.by(known)).toList(),
        spent != null && spent.isAfter(known) ? known : spent,
        said);
  }

  /** Whether the person, asked at {@code at}, did not believe that so much time had gone by. */
  public boolean doubts(Instant at) {
    return said.stream().anyMatch(s -> s.answer() == Answer.CLOCK && s.at().isBefore(at));
  }

  /** Whether the rod's place counts from here on. */
  public boolean anew() {
    return said.stream().anyMatch(one -> one.answer().startsAnew());
  }

  /**
   * A stop in another session that still holds.
   *
   * @param session its name
   * @param outcome the outcome's word
   * @param why in a sentence
   */
  public record Stop(Instant at, String session, String outcome, String why) {
    /** What it means, in a sentence. */
    public static final String HOLDS =
        "The rod is not turned in any session until a qualified repairer's finding is on record.";
  }

  /**
   * What the person said of a record.
   *
   * @param at the time up to which it is said: of the record's last event, or of what was lost
   * @param about the session's or the file's name
   * @param turn the amount that was turned in it, or null where none was said
   * @param words the person's own words, or null where none were asked for
   */
  public record Said(
      Instant at, String about, Answer answer, @Nullable Turn turn, @Nullable String words) {}

  /** What may be said of a record. */
  public enum Answer implements Worded {
    /** It is of the same instrument. */
    SAME,
    /** It is of another instrument. */
    ANOTHER,
    /** Nobody knows. */
    UNSURE,
    /** By so much was the rod turned in the part that can't be read. */
    TURNED,
    /** The clock was wrong when it was written. */
    CLOCK,
    /** A repairer has looked at the instrument since. */
    FINDING,
    /** The rod counts as found where it stands now. */
    NEW_START;

    /** Whether a record that can't be read needs no more to be said of it. */
    public boolean settles() {
      return this == ANOTHER || this == TURNED || startsAnew();
    }

    /** Whether the rod's place counts from here on. */
    public boolean startsAnew() {
      return this == FINDING || this == NEW_START;
    }
  }
}
