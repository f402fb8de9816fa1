package quarterturn.screen.terminal;

/**
 * The plain twin of each character the face draws with, one for one, so that a view has the same
 * layout on a terminal that only shows ASCII.
 */
final class AsciiTwins {
  private static final String DRAWN =
      "─‾–—▄▀═│║╞╡┌┐└┘├┤╤╧╪╢╟┬┴┼╔╗╚╝█▓■▒░►→›»◄←‹«▲↑▼↓↕√·•∙●○°×…‘’“”″\u00a0";
  private static final String TWINS =
      "------=||||++++++++++++++++++###..>>>><<<<^^vv:x...@oox~''\"\"\" ";

  private AsciiTwins() {}

  /** The twin of {@code codePoint}; a question mark where it has none. */
  static int twin(int codePoint) {
    if (codePoint < 0x7f) {
      return codePoint;
    }
    int place = DRAWN.indexOf(codePoint);
    return place < 0 ? '?' : TWINS.charAt(place);
  }
}
