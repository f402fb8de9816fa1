package quarterturn.screen.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import java.io.IOException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/** Paints a {@link Canvas} on the terminal, sending only what changed. */
final class Painter {
  private final BridgeTerminal terminal;
  private final TerminalScreen screen;
  private final boolean colour;
  private final Map<Ink, Map<Integer, TextCharacter>> known = new EnumMap<>(Ink.class);

  Painter(BridgeTerminal terminal, boolean colour) throws IOException {
    this.terminal = terminal;
    this.screen = new TerminalScreen(terminal);
    this.colour = colour;
    screen.startScreen();
  }

  /** Makes Lanterna find out, once, where letters end and how numbers are written here. */
  static void prepare() {
    TextCharacter.fromString(" ");
  }

  /**
   * Paints a canvas.
   *
   * @param whole whether to clear the window first and send every cell
   */
  void paint(Canvas canvas, boolean whole) throws IOException {
    screen.doResizeIfNecessary();
    if (whole) {
      // Else a terminal may clear its window with the ink of the last letter.
      terminal.resetColorAndSGR();
    }
    screen.clear();
    for (int r = 0; r < canvas.height(); r++) {
      for (int c = 0; c < canvas.width(); c++) {
        boolean blank = canvas.at(c, r) == ' ' && canvas.inkAt(c, r) == Ink.PLAIN;
        if (!blank && canvas.at(c, r) != Canvas.TAIL) {
          screen.setCharacter(c, r, character(canvas.at(c, r), canvas.inkAt(c, r)));
        }
      }
    }
    boolean typing = canvas.cursorColumn() >= 0;
    screen.setCursorPosition(
        typing ? new TerminalPosition(canvas.cursorColumn(), canvas.cursorRow()) : null);
    screen.refresh(whole ? Screen.RefreshType.COMPLETE : Screen.RefreshType.DELTA);
  }

  private TextCharacter character(int codePoint, Ink ink) {
    return known
        .computeIfAbsent(ink, i -> new HashMap<>())
        .computeIfAbsent(codePoint, c -> made(Character.toString(c), ink));
  }

  private TextCharacter made(String text, Ink ink) {
    TextColor front = TextColor.ANSI.DEFAULT;
    TextColor back = TextColor.ANSI.DEFAULT;
    boolean accent = ink == Ink.NOW || ink == Ink.SIGNAL;
    if (accent && colour) {
      // Both are given, so that it reads on a light ground as on a dark one.
      front = TextColor.ANSI.BLACK;
      back = ink == Ink.NOW ? TextColor.ANSI.CYAN : TextColor.ANSI.YELLOW;
    }
    TextCharacter plain = TextCharacter.fromString(text, front, back)[0];
    if (ink == Ink.STRONG) {
      return plain.withModifier(SGR.BOLD);
    }
    return ink == Ink.MARKED || (accent && !colour) ? plain.withModifier(SGR.REVERSE) : plain;
  }
}
