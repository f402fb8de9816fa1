package quarterturn.screen.terminal;

/**
 * The style of a character. No meaning depends on it alone, so that nothing is lost without colour.
 */
public enum Ink {
  PLAIN,
  /** Bold. */
  STRONG,
  /** Reversed. */
  MARKED,
  /** The person's present place: the first accent, reversed without colour. */
  NOW,
  /** A signal word: the second accent, reversed without colour. */
  SIGNAL
}
