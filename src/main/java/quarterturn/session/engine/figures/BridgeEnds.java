package quarterturn.session.engine.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.SaddleEnds;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/**
 * Says what is to be done at the two ends of a bridge on posts, or of a saddle in one piece.
 *
 * @param ends the wanted rises; zero where the string at that end is in range
 * @param lowest the note of the lowest string
 * @param highest the note of the highest string
 */
public record BridgeEnds(SaddleEnds ends, String lowest, String highest) {
  private static final int ENDS = 2;

  /** A change below this, in millimetres, is none: a rule does not show it. */
  private static final double LEAST = 0.05;

  /**
   * How far a saddle stands above its bridge, in front of the lowest and of the highest string.
   *
   * @throws NotUnderstoodException where these are no two lengths
   */
  public static List<Length> stands(String typed) {
    List<Length> both = new ArrayList<>();
    for (String part : typed.strip().replace("mm", " ").split("[ ;/]+")) {
      both.add(Length.parse(part));
    }
    if (both.size() != ENDS || both.stream().anyMatch(one -> one.mm() < 0)) {
      throw new NotUnderstoodException("write two figures in millimetres, for example 4.5 3.5");
    }
    return both;
  }

  /** How far to set the posts of a bridge. */
  public String posts() {
    if (none(ends.lowest()) && none(ends.highest())) {
      return "The two outer strings are in range, so the bridge stays; the others follow its curve";
    }
    String first = post(ends.lowest(), lowest);
    return first.substring(0, 1).toUpperCase(Locale.ROOT)
        + first.substring(1)
        + "; "
        + post(ends.highest(), highest)
        + ". That is twice what is wanted at fret 12. Each end moves the other strings too, so all"
        + " are read again";
  }

  private static String post(Length rise, String string) {
    String end = "the bridge's end at " + string;
    return none(rise)
        ? "leave " + end
        : (rise.mm() > 0 ? "raise " : "lower ") + end + " by " + size(rise);
  }

  /**
   * What a repairer is to take off a saddle in one piece, or to add, and what is left of it.
   *
   * @param stands its height above the bridge at both ends, or null where that is not known
   */
  public String saddle(@Nullable List<Length> stands) {
    if (none(ends.lowest()) && none(ends.highest())) {
      return "Both outer strings are in range at fret 12. Wanted: the saddle's top shaped under the"
          + " inner ones";
    }
    String wanted =
        "Wanted, for the middle of each range: "
            + off(ends.lowest(), lowest)
            + ", and "
            + off(ends.highest(), highest)
            + ", in a straight line between. That is twice what is wanted at fret 12";
    if (stands == null) {
      return wanted + ". How far the saddle stands above the bridge is not known";
    }
    SaddleEnds left = ends.left(stands.get(0), stands.get(1));
    return wanted
        + ". Left standing above the bridge: "
        + Decimals.print(left.lowest().mm(), 1)
        + " mm at "
        + lowest
        + " and "
        + Decimals.print(left.highest().mm(), 1)
        + " mm at "
        + highest;
  }

  private static String off(Length rise, String string) {
    return none(rise)
        ? "nothing off at " + string
        : size(rise) + (rise.mm() > 0 ? " added at " : " off at ") + string;
  }

  private static boolean none(Length rise) {
    return Math.abs(rise.mm()) < LEAST;
  }

  private static String size(Length rise) {
    return Decimals.print(Math.abs(rise.mm()), 1) + " mm";
  }
}
