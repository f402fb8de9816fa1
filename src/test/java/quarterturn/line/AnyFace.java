package quarterturn.line;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import org.jline.builtins.ScreenTerminal;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import quarterturn.lesson.student.LessonSession;
import quarterturn.screen.LessonFace;
import quarterturn.screen.terminal.Settings;
import quarterturn.screen.terminal.Surface;
import quarterturn.script.ScriptFace;
import quarterturn.unit.Dates;

/** A bench of a lesson on one of the faces, in this process: keys or lines in, text out. */
abstract class AnyFace {
  private static final Dates DATES = new Dates(ZoneOffset.UTC);

  /** The kinds of face. */
  enum Kind {
    SCREEN,
    TYPED,
    PIPE,
    JSON;

    AnyFace make() throws IOException {
      return switch (this) {
        case SCREEN -> new OnScreen();
        case TYPED -> new Typed();
        case PIPE -> new Piped();
        case JSON -> new Json();
      };
    }
  }

  private volatile String ended = "";

  /** Plays the bench until it is over, on a thread of its own. */
  Thread begin(LessonSession session) {
    Thread thread =
        new Thread(
            () -> {
              try {
                play(session);
              } catch (Exception e) {
                ended = "it ended with " + e;
              }
            });
    thread.setDaemon(true);
    thread.start();
    return thread;
  }

  abstract void play(LessonSession session) throws Exception;

  abstract void type(String keys) throws IOException;

  /** What can be seen: a screen as it is, or all that was printed. */
  abstract String seen();

  String shown() {
    return seen() + ended;
  }

  /** A terminal in this process. */
  private abstract static class AtTerminal extends AnyFace {
    private final ScreenTerminal emulator = new ScreenTerminal(100, 40);
    final LineDisciplineTerminal terminal;

    AtTerminal() throws IOException {
      OutputStream out =
          new OutputStream() {
            private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

            @Override
            public synchronized void write(int b) {
              bytes.write(b);
            }

            @Override
            public synchronized void flush() {
              synchronized (emulator) {
                emulator.write(bytes.toString(StandardCharsets.UTF_8));
              }
              bytes.reset();
            }
          };
      terminal = new LineDisciplineTerminal("test", "xterm", out, StandardCharsets.UTF_8);
      terminal.setSize(new Size(100, 40));
    }

    @Override
    void type(String keys) throws IOException {
      terminal.processInputBytes(keys.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    String seen() {
      synchronized (emulator) {
        return emulator.toString();
      }
    }
  }

  private static final class OnScreen extends AtTerminal {
    OnScreen() throws IOException {}

    @Override
    void play(LessonSession session) throws Exception {
      try (Surface surface = Surface.open(terminal, new Settings(false, true))) {
        LessonFace.run(surface, session, "join x", ZoneOffset.UTC, "");
      }
    }
  }

  private static final class Typed extends AtTerminal {
    Typed() throws IOException {}

    @Override
    void play(LessonSession session) throws Exception {
      try (TerminalSource source = new TerminalSource(terminal)) {
        LessonLine.run(session, "join x", source, source.out(), DATES);
      }
    }
  }

  private abstract static class OnPipes extends AnyFace {
    private final BlockingQueue<Integer> keys = new LinkedBlockingQueue<>();
    final ByteArrayOutputStream out = new ByteArrayOutputStream();

    /** Gives each byte as it is typed. */
    final InputStream in =
        new InputStream() {
          @Override
          public int read() throws IOException {
            try {
              return keys.take();
            } catch (InterruptedException e) {
              throw new IOException(e);
            }
          }

          @Override
          public int read(byte[] to, int from, int most) throws IOException {
            to[from] = (byte) read();
            return 1;
          }
        };

    @Override
    void type(String text) {
      for (byte key : text.replace('\r', '\n').getBytes(StandardCharsets.UTF_8)) {
        keys.add((int) key);
      }
    }

    @Override
    String seen() {
      return out.toString(StandardCharsets.UTF_8);
    }
  }

  private static final class Piped extends OnPipes {
    @Override
    void play(LessonSession session) throws Exception {
      PrintWriter writer = new PrintWriter(out, true, StandardCharsets.UTF_8);
      InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
      LessonLine.run(session, "join x", new PipeSource(reader, writer, false), writer, DATES);
    }
  }

  private static final class Json extends OnPipes {
    @Override
    void play(LessonSession session) throws Exception {
      PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
      new ScriptFace(in, stream).lesson(session);
    }
  }
}
