package quarterturn.command;

import java.io.Console;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import org.jline.terminal.Terminal;
import quarterturn.line.LineFace;
import quarterturn.line.Typing;
import quarterturn.report.Dates;
import quarterturn.screen.ScreenFace;
import quarterturn.screen.Settings;
import quarterturn.screen.SystemTerminal;
import quarterturn.script.ScriptFace;

/** Plays a session in the face that was chosen. */
record Faces(Kind kind, boolean coloured) {
  /** The faces. */
  enum Kind {
    /** Full screen. */
    SCREEN,
    /** Typed lines. */
    TYPED,
    /** JSON lines. */
    SCRIPT
  }

  /** Whether both ends are a terminal. */
  static boolean atATerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      // From Java 22 on there is a console without a terminal too, and a way to ask.
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (IllegalAccessException | InvocationTargetException e) {
      return false;
    }
  }

  /** Plays until the session ends or is left, and returns the exit status. */
  int play(Desk.Opened opened) throws IOException, InterruptedException {
    return switch (kind) {
      case SCREEN -> {
        try (Terminal terminal = SystemTerminal.open()) {
          yield onScreen(terminal, opened);
        }
      }
      case TYPED -> {
        try (Typing typing = typing()) {
          yield typed(typing, opened);
        }
      }
      case SCRIPT -> script(opened);
    };
  }

  private static int script(Desk.Opened opened) {
    if (opened.notice() != null) {
      // Standard output is for prompts alone.
      System.err.println("quarterturn: " + opened.notice());
    }
    return ScriptFace.run(opened.bench(), System.in, System.out);
  }

  private int onScreen(Terminal terminal, Desk.Opened opened)
      throws IOException, InterruptedException {
    if (opened.notice() != null) {
      terminal.writer().println("Notice: " + opened.notice());
    }
    return ScreenFace.run(terminal, opened.bench(), settings(terminal), ZoneId.systemDefault());
  }

  int typed(Typing typing, Desk.Opened opened) {
    if (opened.notice() != null) {
      typing.out().println("Notice: " + opened.notice());
    }
    Dates dates = new Dates(ZoneId.systemDefault());
    return LineFace.run(opened.bench(), typing.source(), typing.out(), dates);
  }

  Typing typing() {
    return Typing.open(System.getenv("TERM"), atATerminal(), System.in, System.out);
  }

  Settings settings(Terminal terminal) {
    return new Settings(coloured, StandardCharsets.UTF_8.equals(terminal.encoding()));
  }
}
