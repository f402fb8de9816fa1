package quarterturn.screen;

/**
 * The plain twin of each character the face draws with, one for one, so that a view has the same
 * layout on a terminal that only shows ASCII.
 */
final class Ascii {
  private Ascii() {}

  /** The twin of {@code codePoint}; a question mark where it has none. */
  static int twin(int codePoint) {
    if (codePoint < 0x7f) {
      return codePoint;
    }
    return switch (codePoint) {
      case '─', '‾', '–', '—', '▄', '▀' -> '-';
      case '═' -> '=';
      case '│', '║', '╞', '╡' -> '|';
      case '┌',
          '┐',
          '└',
          '┘',
          '├',
          '┤',
          '╤',
          '╧',
          '╪',
          '╢',
          '╟',
          '┬',
          '┴',
          '┼',
          '╔',
          '╗',
          '╚',
          '╝' ->
          '+';
      case '█', '▓', '■' -> '#';
      case '▒', '░' -> '.';
      case '►', '→', '›', '»' -> '>';
      case '◄', '←', '‹', '«' -> '<';
      case '▲', '↑' -> '^';
      case '▼', '↓' -> 'v';
      case '↕' -> ':';
      case '√' -> 'x';
      case '·', '•', '∙' -> '.';
      case '●' -> '@';
      case '○', '°' -> 'o';
      case '×' -> 'x';
      case '…' -> '~';
      case '‘', '’' -> '\'';
      case '“', '”', '″' -> '"';
      case '\u00a0' -> ' ';
      default -> '?';
    };
  }
}
