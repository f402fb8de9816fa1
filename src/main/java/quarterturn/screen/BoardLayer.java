package quarterturn.screen;

/** The views that can be opened over the benches of a board. */
enum BoardLayer {
  NONE(""),
  KEYS("Keys of the board"),
  BENCH("The bench"),
  SPREAD("Predicted and read"),
  ORDERS("Orders, the newest first"),
  LEVEL("How much is shown to whom");

  private final String title;

  BoardLayer(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }
}
