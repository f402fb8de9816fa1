package quarterturn.session;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * The state of one result of a set-up.
 *
 * @param id the result's id
 * @param name the result's name
 * @param by id of the procedure that reads it again, or null where tuning is enough
 * @param status its state
 * @param reading the last readings in words; empty where there are none
 * @param because the reason why it is stale, as a clause, or null
 * @param since when it went stale, or was read, or null
 */
public record Stage(
    String id,
    String name,
    @Nullable String by,
    Status status,
    String reading,
    @Nullable String because,
    @Nullable Instant since) {
  /** The states of a result. */
  public enum Status {
    NOT_DONE("not done"),
    STALE("stale"),
    /** A result that probably holds, although something happened that is worth a second look. */
    CHECK("look again"),
    OUT("out of range"),
    FRESH("fresh");

    private final String words;

    Status(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** Whether a later stage may use the result. */
    public boolean usable() {
      return this == CHECK || this == OUT || this == FRESH;
    }
  }
}
