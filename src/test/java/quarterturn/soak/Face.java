package quarterturn.soak;

/** How the program is talked to in a round. */
enum Face {
  SCREEN(""),
  TYPED("--plain"),
  PIPE("--plain"),
  LINES("--lines");

  private final String option;

  Face(String option) {
    this.option = option;
  }

  /** Its option on the command line; empty where it is the usual one. */
  String option() {
    return option;
  }

  boolean terminal() {
    return this == SCREEN || this == TYPED;
  }
}
