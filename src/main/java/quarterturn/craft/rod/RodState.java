package quarterturn.craft.rod;

/** How a rod may be: what may lie behind a neck's answers. */
enum RodState {
  /** It answers, tightening lowers the relief. */
  WORKS,
  /** It does nothing. */
  DEAD,
  /** It answers the other way round. */
  REVERSED,
  /** Fully loose: loosening does nothing, tightening works. */
  FULLY_LOOSE,
  /** At the other end of its travel: tightening does nothing, loosening works. */
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
