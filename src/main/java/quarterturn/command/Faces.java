package quarterturn.command;

import java.io.Console;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;
import quarterturn.line.AutoSource;
import quarterturn.line.LineFace;
import quarterturn.line.LineSource;
import quarterturn.line.Typing;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.report.Dates;
import quarterturn.screen.ScreenFace;
import quarterturn.screen.terminal.Settings;
import quarterturn.screen.terminal.Surface;
import quarterturn.screen.terminal.SystemTerminal;
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
  int play(Bench bench, @Nullable String notice) throws IOException, InterruptedException {
    return switch (kind) {
      case SCREEN -> {
        try (Terminal terminal = SystemTerminal.open()) {
          if (notice != null) {
            terminal.writer().println("Notice: " + notice);
          }
          yield ScreenFace.run(terminal, bench, settings(terminal), ZoneId.systemDefault());
        }
      }
      case TYPED -> {
        try (Typing typing = typing()) {
          yield typed(typing, bench, notice);
        }
      }
      case SCRIPT -> {
        if (notice != null) {
          // Standard output is for prompts alone.
          System.err.println("quarterturn: " + notice);
        }
        yield ScriptFace.run(bench, System.in, System.out);
      }
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

  private static int typed(LineSource source, Typing typing, Bench bench) {
    return LineFace.run(bench, source, typing.out(), new Dates(ZoneId.systemDefault()));
  }

  /** A session in typed lines. */
  static int typed(Typing typing, Bench bench, @Nullable String notice) {
    if (notice != null) {
      typing.out().println("Notice: " + notice);
    }
    return typed(typing.source(), typing, bench);
  }

  Typing typing() {
    return Typing.open(System.getenv("TERM"), atATerminal(), System.in, System.out);
  }

  Settings settings(Terminal terminal) {
    return new Settings(coloured, StandardCharsets.UTF_8.equals(terminal.encoding()));
  }
}
