package quarterturn.screen;

/** What stands over the benches of a board. */
enum BoardLayer {
  NONE("", false),
  KEYS("Keys of the board", false),
  BENCH("The bench", false),
  SPREAD("Predicted and read", false),
  ORDERS("Orders, and what the benches said", false),
  RELEASE("Let it go on", true),
  HOLD("Hold the bench", true),
  HOLD_ALL("Hold every bench", true),
  LEVEL("How much is shown to whom", false),
  END("End the lesson?", false);

  private final String title;
  private final boolean typing;

  BoardLayer(String title, boolean typing) {
    this.title = title;
    this.typing = typing;
  }

  String title() {
    return title;
  }

  /** Whether letters are text here. */
  boolean typing() {
    return typing;
  }
}
