package quarterturn.platform;

/** What the program runs on. */
public final class Machine {
  private Machine() {}

  /** The Java and the system, such as "Java 17.0.15, Linux 6.1.0 amd64". */
  public static String words() {
    return "Java "
        + System.getProperty("java.version")
        + ", "
        + System.getProperty("os.name")
        + " "
        + System.getProperty("os.version")
        + " "
        + System.getProperty("os.arch");
  }
}
