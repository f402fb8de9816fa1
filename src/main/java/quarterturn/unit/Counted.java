package quarterturn.unit;

/** Words for a number and what it counts. */
public final class Counted {
  private Counted() {}

  /** The number and the noun, in the plural where needed: "1 step", "2 steps". */
  public static String of(long count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
