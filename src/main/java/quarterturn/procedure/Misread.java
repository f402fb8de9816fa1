package quarterturn.procedure;

/** A condition that cannot be read, and the letter at which it goes wrong. */
final class Misread extends Exception {
  private static final long serialVersionUID = 1L;

  private final int at;

  Misread(int at, String message) {
    super(message);
    this.at = at;
  }

  /** Index into the condition's text. */
  int at() {
    return at;
  }
}
