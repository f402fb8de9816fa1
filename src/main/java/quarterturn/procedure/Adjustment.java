package quarterturn.procedure;

import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Worded;

/** The things that can be set string by string, each with the reading it is set by. */
public enum Adjustment implements Worded {
  SADDLE_HEIGHT(Quantity.ACTION),
  SADDLE_PLACE(Quantity.INTONATION),
  PICKUP_HEIGHT(Quantity.PICKUP_GAP);

  private final Quantity quantity;

  Adjustment(Quantity quantity) {
    this.quantity = quantity;
  }

  /** The quantity whose reading this adjustment is set by. */
  public Quantity quantity() {
    return quantity;
  }
}
