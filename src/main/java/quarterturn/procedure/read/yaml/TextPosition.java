package quarterturn.procedure.read.yaml;

import quarterturn.procedure.Mark;
import quarterturn.procedure.read.yaml.Node.Scalar;

/**
 * Finds the place of a character of a value in its file, through quotes, folded lines and indents.
 */
public final class TextPosition {
  private final String raw;
  private final String text;
  private int inRaw;

  private TextPosition(Scalar scalar) {
    raw = scalar.raw();
    text = scalar.text();
    if (raw.startsWith("\"") || raw.startsWith("'")) {
      inRaw = 1;
    } else if (raw.startsWith("|") || raw.startsWith(">")) {
      inRaw = raw.indexOf('\n') + 1;
    }
  }

  /**
   * The place of the character {@code at} of the value's text; the place of the value where that
   * cannot be found.
   */
  public static Mark within(Source source, Scalar scalar, int at) {
    TextPosition place = new TextPosition(scalar);
    if (!place.walk(at)) {
      return scalar.mark();
    }
    int before = place.raw.codePointCount(0, place.inRaw);
    return source.mark(source.offset(scalar.mark()) + before);
  }

  private boolean walk(int at) {
    skipSpace();
    for (int i = 0; i < at; i++) {
      if (Character.isWhitespace(text.charAt(i))) {
        skipSpace();
      } else if (!step(text.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private void skipSpace() {
    while (inRaw < raw.length() && Character.isWhitespace(raw.charAt(inRaw))) {
      inRaw++;
    }
  }

  private boolean step(char letter) {
    if (inRaw >= raw.length() || raw.charAt(inRaw) != letter) {
      return false;
    }
    inRaw += letter == '\'' && raw.startsWith("''", inRaw) ? 2 : 1;
    return true;
  }
}
