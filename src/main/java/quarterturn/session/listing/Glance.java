package quarterturn.session.listing;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/**
 * A session's data for listings. The texts are unchecked: show them through {@link Printable}.
 *
 * @param kind id of the kind named at the start; null also where it was chosen later
 * @param last when its last event happened
 * @param ended how it ended, without the words of it; or null
 * @param standing the state the instrument was left in, when the session was left or discarded;
 *     null where it was broken off since
 * @param waitingUntil when its present wait ends, or null
 * @param notice a sentence on what is wrong with the file, or null
 * @param damaged whether the session can't be resumed
 * @param turned when the rod last moved, or null
 * @param relief when the relief was last read, or null
 * @param discarded when it was discarded, or null
 * @param half the turn that was asked for and has no answer yet, or null
 * @param unread whether the rod was turned and the relief not read since
 * @param by who worked last, or null where that is not said
 * @param rod what was done to the rod in it
 */
public record Glance(
    String name,
    @Nullable String procedure,
    @Nullable String instrument,
    @Nullable String kind,
    @Nullable Instant started,
    @Nullable Instant last,
    Event.@Nullable Ended ended,
    @Nullable String standing,
    @Nullable Instant waitingUntil,
    @Nullable String notice,
    boolean damaged,
    @Nullable Instant turned,
    @Nullable Instant relief,
    @Nullable Instant discarded,
    @Nullable Turn half,
    boolean unread,
    @Nullable String by,
    Rod rod) {
  /**
   * What a session did to the rod.
   *
   * @param moves how often it was turned
   * @param net where that left it; plus is tighter
   * @param sure whether it is known how far
   */
  public record Rod(int moves, Turn net, boolean sure) {
    public static final Rod NOT_TURNED = new Rod(0, Turn.NONE, true);
  }

  /** One without a half-made turn, whose relief was read since the last, by nobody named. */
  public Glance(
      String name,
      @Nullable String procedure,
      @Nullable String instrument,
      @Nullable String kind,
      @Nullable Instant started,
      @Nullable Instant last,
      Event.@Nullable Ended ended,
      @Nullable String standing,
      @Nullable Instant waitingUntil,
      @Nullable String notice,
      boolean damaged,
      @Nullable Instant turned,
      @Nullable Instant relief,
      @Nullable Instant discarded) {
    this(
        name,
        procedure,
        instrument,
        kind,
        started,
        last,
        ended,
        standing,
        waitingUntil,
        notice,
        damaged,
        turned,
        relief,
        discarded,
        null,
        false,
        null,
        Rod.NOT_TURNED);
  }

  /**
   * Whether the session can be resumed. One that was broken off before its start was recorded has
   * nothing to resume.
   */
  public boolean unfinished() {
    return started != null && ended == null && discarded == null && !damaged;
  }

  /** The same under another name. */
  Glance named(String other) {
    return other.equals(name)
        ? this
        : new Glance(
            other,
            procedure,
            instrument,
            kind,
            started,
            last,
            ended,
            standing,
            waitingUntil,
            notice,
            damaged,
            turned,
            relief,
            discarded,
            half,
            unread,
            by,
            rod);
  }

  /** When the session ended or was discarded, or null. */
  public @Nullable Instant over() {
    return ended == null ? discarded : ended.at();
  }

  /** The name of the session's instrument, or of its kind where the instrument has none. */
  public String on() {
    String named = instrument != null ? instrument : kind;
    return named != null ? named : "an instrument without a name";
  }
}
