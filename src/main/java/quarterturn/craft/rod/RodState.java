package quarterturn.craft.rod;

/** The states that a rod may be in. */
enum RodState {
  /** Tightening lowers the relief, loosening raises it. */
  WORKS,
  /** The rod does nothing. */
  DEAD,
  /** Tightening raises the relief, loosening lowers it. */
  REVERSED,
  /** Fully loose: loosening does nothing, tightening works. */
  FULLY_LOOSE,
  /** Fully tight, at the other end of its travel: tightening does nothing, loosening works. */
  FULLY_TIGHT;

  /** Whether a turn of this sign (plus tightens) can do anything. */
  boolean answers(double turns) {
    return switch (this) {
      case WORKS, REVERSED -> true;
      case DEAD -> false;
      case FULLY_LOOSE -> turns > 0;
      case FULLY_TIGHT -> turns < 0;
    };
  }
}
