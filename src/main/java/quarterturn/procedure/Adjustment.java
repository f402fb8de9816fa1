package quarterturn.procedure;

import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Worded;

/** The things that can be set string by string, each with the reading it is set by. */
public enum Adjustment implements Worded {
  SADDLE_HEIGHT(Quantity.ACTION, true),
  SADDLE_PLACE(Quantity.INTONATION, true),
  PICKUP_HEIGHT(Quantity.PICKUP_GAP, false);

  private final Quantity quantity;
  private final boolean alone;

  Adjustment(Quantity quantity, boolean alone) {
    this.quantity = quantity;
    this.alone = alone;
  }

  /** Whether setting one string leaves what is read on the others as it was. */
  public boolean alone() {
    return alone;
  }

  /** The quantity whose reading this adjustment is set by. */
  public Quantity quantity() {
    return quantity;
  }
}
