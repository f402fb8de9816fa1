package quarterturn.report;

import java.util.Locale;
import quarterturn.procedure.Adjustment;
import quarterturn.session.Event;

/** A sentence for the setting of a saddle or a pickup. */
public final class AdjustedWords {
  private AdjustedWords() {}

  public static String of(Event.Adjusted adjusted) {
    String mm = String.format(Locale.ROOT, "%.1f mm", Math.abs(adjusted.amount()));
    boolean plus = adjusted.amount() > 0;
    String what = adjusted.change().replace('-', ' ');
    String how =
        adjusted.change().equals(Adjustment.SADDLE_PLACE.word())
            ? plus ? " back by " : " forward by "
            : plus ? " up by " : " down by ";
    return "Set the " + what + " of " + adjusted.string() + how + mm + ", as reckoned.";
  }
}
