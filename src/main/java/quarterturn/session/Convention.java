package quarterturn.session;

import org.jspecify.annotations.Nullable;
import quarterturn.craft.Held;
import quarterturn.craft.Neck;
import quarterturn.craft.Scale;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;

/**
 * Converts readings taken by another convention than the kind's. Relief read over other frets is
 * converted as on an evenly bent neck; nothing else can be.
 */
public final class Convention {
  private Convention() {}

  /** Whether a reading was taken by the kind's convention. */
  public static boolean same(Event.Before before, Kind kind) {
    Quantity quantity = before.quantity();
    return before.readAt() < 0
        || (before.readAt() == quantity.readAt(kind) && before.held().equals(quantity.held(kind)));
  }

  /** The relief as the kind's convention would read it, or null where it can't be converted. */
  public static @Nullable Bracket reckoned(Event.Before before, Kind kind) {
    Bracket bracket = before.bracket();
    boolean relief = before.quantity() == Quantity.RELIEF && before.held().size() == 2;
    if (!relief || bracket == null || !bracket.bounded()) {
      return null;
    }
    int low = before.held().get(0);
    int high = before.held().get(1);
    int readAt = before.readAt();
    if (!(low < readAt && readAt < high && readAt < kind.jointFret())) {
      return null;
    }
    Held then = new Held(low, high, readAt);
    return new Bracket(over(bracket.lowMm(), then, kind), over(bracket.highMm(), then, kind));
  }

  private static double over(double mm, Held then, Kind kind) {
    Neck neck = Neck.uniform(new Scale(kind.scale()), kind.jointFret(), Length.mm(mm), then);
    return neck.relief(Held.at(kind.jointFret(), kind.readAt())).mm();
  }

  /**
   * A converted reading in words: "0.33 to 0.38 mm, reckoned from a reading over fret 8 held at 1
   * and 16".
   */
  public static String words(Bracket bracket, Event.Before before) {
    return Decimals.print(bracket.lowMm(), 2)
        + " to "
        + Decimals.print(bracket.highMm(), 2)
        + " mm, reckoned from a reading over fret "
        + before.readAt()
        + " held at "
        + before.held().get(0)
        + " and "
        + before.held().get(1);
  }
}
