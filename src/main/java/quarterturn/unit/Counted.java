package quarterturn.unit;

/** A number with what it counts. */
public final class Counted {
  private Counted() {}

  /** "1 step", "2 steps". */
  public static String of(long count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
