package quarterturn.unit;

/**
 * A force in newtons. {@link #parse} takes {@code 180}, {@code 180 N}, {@code 40 lbf} and {@code 18
 * kgf}; a bare number is newtons.
 */
public record Force(double newtons) {
  /** Standard gravity in m/s2, exact (third CGPM, 1901). */
  public static final double GRAVITY = 9.80665;

  /** Newtons in one pound-force: 0.45359237 kg (exact, 1959) under standard gravity. */
  public static final double NEWTONS_PER_POUND_FORCE = 0.45359237 * GRAVITY;

  public Force {
    if (!Double.isFinite(newtons)) {
      throw new IllegalArgumentException("a force must be a finite number of newtons");
    }
  }

  public static Force newtons(double newtons) {
    return new Force(newtons);
  }

  /**
   * Reads a typed force.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Force parse(String typed) {
    Typed read = Typed.read(typed);
    return switch (read.unit()) {
      case "", "n" -> new Force(read.number());
      case "lbf", "lb", "lbs" -> new Force(read.number() * NEWTONS_PER_POUND_FORCE);
      case "kgf", "kg" -> new Force(read.number() * GRAVITY);
      default -> throw Typed.no(typed, "a force", "180, 180 N or 40 lbf");
    };
  }

  public double poundForce() {
    return newtons / NEWTONS_PER_POUND_FORCE;
  }

  @Override
  public String toString() {
    return Decimals.plain(newtons) + " N";
  }
}
