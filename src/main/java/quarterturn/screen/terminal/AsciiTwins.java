package quarterturn.screen.terminal;

/**
 * The ASCII replacement for each character that the screen draws with, one for one, so that a view
 * has the same layout on a terminal without Unicode.
 */
final class AsciiTwins {
  private static final String DRAWN =
      "─‾–—▄▀═│║╞╡┌┐└┘├┤╤╧╪╢╟┬┴┼╔╗╚╝█▓■▒░►→›»◄←‹«▲↑▼↓↕√·•∙●○°×…‘’“”″\u00a0";
  private static final String TWINS =
      "------=||||++++++++++++++++++###..>>>><<<<^^vv:x...@oox~''\"\"\" ";

  private AsciiTwins() {}

  /** The ASCII replacement of {@code codePoint}; a question mark where it has none. */
  static int twin(int codePoint) {
    if (codePoint < 0x7f) {
      return codePoint;
    }
    int place = DRAWN.indexOf(codePoint);
    return place < 0 ? '?' : TWINS.charAt(place);
  }
}
