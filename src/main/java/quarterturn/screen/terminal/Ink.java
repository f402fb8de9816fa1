package quarterturn.screen.terminal;

/**
 * How a character is drawn. No meaning rests on it alone: with colour off, and in text, all stands.
 */
public enum Ink {
  PLAIN,
  /** Bold. */
  STRONG,
  /** Reversed. */
  MARKED,
  /** Where the person is now. First accent, reversed where there is no colour. */
  NOW,
  /** A signal word. Second accent, reversed where there is no colour. */
  SIGNAL
}
