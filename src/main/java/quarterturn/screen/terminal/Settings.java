package quarterturn.screen.terminal;

/**
 * How the face draws.
 *
 * @param colour whether the two accents are coloured; without, they are reversed
 * @param unicode whether line-drawing characters may be used; only ever on a UTF-8 terminal
 */
public record Settings(boolean colour, boolean unicode) {}
