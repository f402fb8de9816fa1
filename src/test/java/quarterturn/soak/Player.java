package quarterturn.soak;

/** Answers what is asked, mostly as it should be. */
interface Player {
  /**
   * What to type next.
   *
   * @param out all that was printed so far
   * @return without the key that ends a line, where there is none to be typed
   */
  String next(String out);
}
