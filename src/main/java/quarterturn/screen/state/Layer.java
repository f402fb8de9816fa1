package quarterturn.screen.state;

/** The view that is open over the prompt, if any. */
public enum Layer {
  NONE,
  /** The list of keys. */
  KEYS,
  /** The reason for the step, with its hazards in full. */
  WHY,
  /** The list of all readings and turns. */
  LOG,
  /** The state of every result of the set-up. */
  OVERVIEW,
  /** The picture as large as it fits. */
  PICTURE,
  /** The question whether to leave. */
  LEAVE
}
