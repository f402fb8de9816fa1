package quarterturn.screen;

/** What was chosen in the home view. */
public sealed interface HomeChoice {
  /** Go on with something that is due, by its place in the list. */
  record Due(int index) implements HomeChoice {}

  /** Take up an unfinished session, by its place in the list. */
  record Resume(int index) implements HomeChoice {}

  /** Begin something, by its place in the list. */
  record Start(int index) implements HomeChoice {}

  /** Close the program. */
  record Quit() implements HomeChoice {}

  /** Ctrl-C. */
  record Interrupted() implements HomeChoice {}
}
