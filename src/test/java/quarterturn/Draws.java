package quarterturn;

/** How often tests that draw by chance do so. */
public final class Draws {
  private Draws() {}

  /**
   * This many, ten times as many with the profile {@code deep}, and a small part of it where every
   * test is run once for each change of the code.
   */
  public static int of(int many) {
    double times = Double.parseDouble(System.getProperty("quarterturn.times", "1"));
    return (int) Math.ceil(many * times);
  }
}
