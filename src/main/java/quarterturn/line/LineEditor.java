package quarterturn.line;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jline.keymap.KeyMap;
import org.jline.reader.Binding;
import org.jline.reader.Reference;
import org.jline.reader.Widget;
import org.jline.reader.impl.LineReaderImpl;
import org.jline.terminal.Terminal;
import org.jline.utils.NonBlockingReader;
import quarterturn.unit.Pasted;

/**
 * JLine's editing of a line, in which a paste is a piece of that line and never ends it, and what
 * the terminal reports without being asked is nothing.
 */
final class LineEditor extends LineReaderImpl {
  /** Milliseconds after which the end of a paste, or of a report, is given up. */
  private static final long LOST = 2000;

  private static final int ESC = 0x1b;
  private static final int BELL = 0x07;

  LineEditor(Terminal terminal) throws IOException {
    super(terminal, "quarterturn", Map.of());
    for (KeyMap<Binding> keys : getKeyMaps().values()) {
      List<String> sequences = new ArrayList<>(keys.getBoundKeys().keySet());
      keys.bind((Widget) this::control, "\u001b[");
      // What begins as a key does, and goes on otherwise, is none.
      for (String sequence : sequences) {
        for (int i = 3; sequence.startsWith("\u001b[") && i < sequence.length(); i++) {
          if (keys.getBound(sequence.substring(0, i)) == null) {
            keys.bind((Widget) this::control, sequence.substring(0, i));
          }
        }
      }
      keys.bind((Widget) this::string, "\u001b]", "\u001bP", "\u001bX");
      // JLine would ask the terminal where its cursor is, and swallow keys until it answers.
      for (String mouse : sequences) {
        if (new Reference(MOUSE).equals(keys.getBound(mouse))) {
          keys.unbind(mouse);
        }
      }
      keys.bind((Widget) this::control, "\u001b[<");
      keys.bind((Widget) this::oldMouse, "\u001b[M");
      // The line of an editor elsewhere is no business of a program that starts no other.
      keys.unbind(KeyMap.ctrl('X') + KeyMap.ctrl('E'));
    }
  }

  /** The next character, or -1 where none comes in time. */
  private int next() {
    return peekCharacter(LOST) == NonBlockingReader.READ_EXPIRED ? -1 : readCharacter();
  }

  private boolean control() {
    int c = next();
    while (c >= ' ' && c < '@') {
      c = next();
    }
    return true;
  }

  private boolean oldMouse() {
    for (int i = 0; i < 3; i++) {
      next();
    }
    return true;
  }

  private boolean string() {
    int c = next();
    while (c >= 0 && c != BELL && c != ESC) {
      c = next();
    }
    return c != ESC || next() >= 0;
  }

  @Override
  public boolean beginPaste() {
    Pasted pasted = Pasted.of(toItsEnd());
    String line = getBuffer().toString();
    getBuffer().write(pasted.fitting(line));
    if (!pasted.fits(line)) {
      printAbove(Pasted.REFUSED);
    }
    return true;
  }

  private String toItsEnd() {
    StringBuilder text = new StringBuilder();
    int c = next();
    while (c >= 0) {
      text.appendCodePoint(c);
      int end = text.length() - BRACKETED_PASTE_END.length();
      if (c == '~' && end >= 0 && text.indexOf(BRACKETED_PASTE_END, end) == end) {
        text.setLength(end);
        break;
      }
      if (text.length() > 2 * Pasted.MOST) {
        text.delete(Pasted.MOST, Pasted.MOST + Pasted.MOST / 2);
        text.insert(Pasted.MOST, Pasted.LEFT_OUT);
      }
      c = next();
    }
    return text.toString();
  }

  /** What is pasted between two lines is bracketed too. */
  @Override
  protected void cleanup() {
    super.cleanup();
    if (isSet(Option.BRACKETED_PASTE)) {
      terminal.writer().write(BRACKETED_PASTE_ON);
      terminal.flush();
    }
  }
}
