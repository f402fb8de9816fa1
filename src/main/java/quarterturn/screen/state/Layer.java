package quarterturn.screen.state;

/** What lies over the prompt, if anything. */
public enum Layer {
  NONE,
  /** The keys that work here. */
  KEYS,
  /** Why the step is there, with its hazards in full. */
  WHY,
  /** All readings and turns. */
  LOG,
  /** How every result of the set-up stands. */
  OVERVIEW,
  /** The picture as large as it gets. */
  PICTURE,
  /** Leave, really? */
  LEAVE
}
