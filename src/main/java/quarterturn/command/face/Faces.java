package quarterturn.command.face;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import org.jline.terminal.Terminal;
import quarterturn.line.Typing;
import quarterturn.platform.StandardStreams;
import quarterturn.platform.SystemTerminal;
import quarterturn.screen.terminal.Settings;
import quarterturn.screen.terminal.Surface;
import quarterturn.script.ScriptFace;

/**
 * The face that was chosen.
 *
 * @param zone by which times are shown
 */
public record Faces(Kind kind, boolean coloured, ZoneId zone) {
  /** The kinds of face. */
  public enum Kind {
    /** Full screen. */
    SCREEN,
    /** Typed lines. */
    TYPED,
    /** JSON lines. */
    SCRIPT
  }

  /** The face, to be closed when its last session ends. */
  public Face open() throws IOException {
    return switch (kind) {
      case SCREEN -> {
        Terminal terminal = SystemTerminal.open();
        yield new OnScreen(terminal, Surface.open(terminal, settings(terminal)), zone);
      }
      case TYPED -> new InLines(typing(), zone);
      case SCRIPT -> new InJson(new ScriptFace(System.in, System.out));
    };
  }

  /** A face that asks in lines: JSON lines where {@code json}, else typed lines. */
  public static Face asking(boolean json, ZoneId zone) throws IOException {
    return new Faces(json ? Kind.SCRIPT : Kind.TYPED, false, zone).open();
  }

  private static Typing typing() {
    return Typing.open(
        System.getenv("TERM"),
        StandardStreams.areATerminal(),
        SystemTerminal::forLines,
        System.in,
        System.out);
  }

  private Settings settings(Terminal terminal) {
    return new Settings(coloured, StandardCharsets.UTF_8.equals(terminal.encoding()));
  }
}
