package quarterturn.screen.terminal;

/**
 * Settings for drawing on the screen.
 *
 * @param colour whether the two accents are coloured; without colour they are reversed
 * @param unicode whether line-drawing characters may be used, which needs a UTF-8 terminal
 */
public record Settings(boolean colour, boolean unicode) {}
