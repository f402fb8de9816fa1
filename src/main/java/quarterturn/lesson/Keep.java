package quarterturn.lesson;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A thing that keeps a bench from going on, or kept it earlier.
 *
 * @param ref the event that began it, by which a release names it
 * @param since by the bench's own clock
 * @param what in words; of a stop the reason, empty where none was given
 * @param value what is to be read back
 * @param spot where a hold point stands, or null
 * @param releasedBy the order that ended it, or null
 */
public record Keep(
    Ref ref,
    Kind kind,
    Instant since,
    String what,
    Value value,
    @Nullable Spot spot,
    @Nullable Ref releasedBy) {
  /** What kind of thing keeps the bench: a stop, a hold point or the teacher's hold. */
  public enum Kind {
    STOP,
    HOLD_POINT,
    TEACHER
  }

  /** Whether this still keeps the bench. */
  public boolean open() {
    return releasedBy == null;
  }

  /**
   * This keep after an order {@code by} that releases {@code meant}; unchanged where another is
   * meant.
   */
  Keep released(Ref meant, Ref by) {
    return open() && ref.equals(meant) ? new Keep(ref, kind, since, what, value, spot, by) : this;
  }

  /** Whether both are the same thing that keeps a bench, whatever was noted of it since. */
  public boolean sameAs(Keep other) {
    return ref.equals(other.ref);
  }
}
