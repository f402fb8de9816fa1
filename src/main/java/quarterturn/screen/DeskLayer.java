package quarterturn.screen;

/** The views that can be opened over the benches of a desk. */
enum DeskLayer {
  NONE(""),
  KEYS("Keys of the desk"),
  BENCH("The bench"),
  SPREAD("Predicted and read"),
  ORDERS("Orders, the newest first"),
  LEVEL("How much is shown to whom");

  private final String title;

  DeskLayer(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }
}
