package quarterturn.session;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How one result of a set-up stands.
 *
 * @param id of the result
 * @param name of the result
 * @param by the procedure that takes it anew, or null where tuning is enough
 * @param status how it stands
 * @param reading the last readings in words, empty where there are none
 * @param because what made it stale, as a clause, or null
 * @param since when that was, or when it was read, or null
 */
public record Stage(
    String id,
    String name,
    @Nullable String by,
    Status status,
    String reading,
    @Nullable String because,
    @Nullable Instant since) {
  /** How it stands. */
  public enum Status {
    NOT_DONE("not done"),
    STALE("stale"),
    /** It probably holds; something happened that is worth a second look. */
    CHECK("look again"),
    OUT("out of its window"),
    FRESH("fresh");

    private final String words;

    Status(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** Whether a later stage may build on it. */
    public boolean usable() {
      return this == CHECK || this == OUT || this == FRESH;
    }
  }
}
