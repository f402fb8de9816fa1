package quarterturn.procedure;

import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Worded;

/** What can be set string by string, and by which reading. */
public enum Adjustment implements Worded {
  SADDLE_HEIGHT(Quantity.ACTION),
  SADDLE_PLACE(Quantity.INTONATION),
  PICKUP_HEIGHT(Quantity.PICKUP_GAP);

  private final Quantity quantity;

  Adjustment(Quantity quantity) {
    this.quantity = quantity;
  }

  /** The reading it follows. */
  public Quantity quantity() {
    return quantity;
  }
}
