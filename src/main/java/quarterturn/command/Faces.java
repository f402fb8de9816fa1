package quarterturn.command;

import java.io.Console;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import org.jline.terminal.Terminal;
import quarterturn.line.AutoSource;
import quarterturn.line.LineFace;
import quarterturn.line.LineSource;
import quarterturn.line.Typing;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.report.Dates;
import quarterturn.screen.ScreenFace;
import quarterturn.screen.Settings;
import quarterturn.screen.Surface;
import quarterturn.screen.SystemTerminal;
import quarterturn.script.AutoLines;
import quarterturn.script.ScriptFace;
import quarterturn.session.Bench;
import quarterturn.session.Player;

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

  /** Plays a rehearsal, and returns the exit status. */
  int play(PracticeBench bench) throws IOException, InterruptedException {
    return switch (kind) {
      case SCREEN -> {
        try (Terminal terminal = SystemTerminal.open()) {
          yield ScreenFace.run(terminal, bench, settings(terminal), ZoneId.systemDefault());
        }
      }
      case TYPED -> {
        try (Typing typing = typing()) {
          yield typed(typing.source(), typing, bench);
        }
      }
      case SCRIPT -> ScriptFace.run(bench, System.in, System.out);
    };
  }

  /** Lets a rehearsal play by itself. */
  int watch(PracticeBench bench, double speed) throws IOException, InterruptedException {
    Player player = new Player(bench, bench::truth, speed);
    return switch (kind) {
      case SCREEN -> {
        try (Terminal terminal = SystemTerminal.open()) {
          ScreenFace.Outcome outcome;
          try (Surface surface = Surface.open(terminal, settings(terminal))) {
            outcome = ScreenFace.watch(surface, player, ZoneId.systemDefault());
          }
          ScreenFace.say(terminal, outcome);
          yield outcome.status();
        }
      }
      case TYPED -> {
        try (Typing typing = typing()) {
          yield watched(typing, player);
        }
      }
      case SCRIPT -> ScriptFace.run(bench, new AutoLines(player), System.out);
    };
  }

  int watched(Typing typing, Player player) {
    return typed(new AutoSource(typing.source(), typing.out(), player), typing, player.bench());
  }

  static int typed(LineSource source, Typing typing, Bench bench) {
    return LineFace.run(bench, source, typing.out(), new Dates(ZoneId.systemDefault()));
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
    return typed(typing.source(), typing, opened.bench());
  }

  Typing typing() {
    return Typing.open(System.getenv("TERM"), atATerminal(), System.in, System.out);
  }

  Settings settings(Terminal terminal) {
    return new Settings(coloured, StandardCharsets.UTF_8.equals(terminal.encoding()));
  }
}
