package quarterturn.procedure;

import java.io.IOException;
import java.io.UncheckedIOException;
import quarterturn.procedure.read.Shelf;

/** What procedures are held to, as it comes with the program. */
public final class ShippedRules {
  public static final Library ALL = all();
  public static final Limits LIMITS = ALL.limits();

  private ShippedRules() {}

  private static Library all() {
    try {
      return new Shelf(null).rules();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (UnreadableException e) {
      throw new IllegalStateException(e);
    }
  }
}
