package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.jline.keymap.KeyMap;
import org.jline.reader.Binding;
import org.jline.reader.Reference;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.Draws;
import quarterturn.Hostile;
import quarterturn.OwnSequences;
import quarterturn.screen.terminal.FakeTerminal;
import quarterturn.unit.Pasted;

/** Lines typed at a terminal that pastes, reports and sends what nobody typed. */
@Timeout(30)
class HostileLinesTest {
  private static final String BEGIN = "\u001b[200~";
  private static final String END = "\u001b[201~";
  private static final int TERMINALS = 3;
  private static final int SENT = 20;
  private static final long SEED = 20270618;

  private static @Nullable String line(FakeTerminal terminal, String typed) throws Exception {
    try (TerminalSource source = new TerminalSource(terminal)) {
      terminal.type(typed);
      return source.readLine("> ", List.of());
    }
  }

  @Test
  void aPasteIsAPieceOfTheLineAndEndsItNowhere() throws Exception {
    try (FakeTerminal terminal = new FakeTerminal(80, 24)) {
      String line = line(terminal, "a" + BEGIN + "u\r\nyes\rq\r" + END + "b\r");
      assertThat(line).isEqualTo("au; yes; qb");
    }
  }

  @Test
  void inHasteItIsTheSameWithoutBrackets() throws Exception {
    try (FakeTerminal terminal = new FakeTerminal(80, 24);
        TerminalSource source = new TerminalSource(terminal)) {
      terminal.type("0.30 passes\r".repeat(40));
      Executor later = CompletableFuture.delayedExecutor(100, TimeUnit.MILLISECONDS);
      later.execute(() -> terminal.type("\r"));
      String line = source.readLine("> ", List.of());
      assertThat(line).isEqualTo("0.30 passes; ".repeat(39) + "0.30 passes");
    }
  }

  @Test
  void whatDoesNotFitIsRefusedWithAWord() throws Exception {
    try (FakeTerminal terminal = new FakeTerminal(80, 24)) {
      String line = line(terminal, BEGIN + "x".repeat(5000) + END + "\r");
      assertThat(line).isEqualTo("x".repeat(Pasted.MOST));
      assertThat(terminal.sent()).contains(Pasted.REFUSED);
      OwnSequences.only(terminal.sent());
    }
  }

  /** JLine's own way asks where the cursor is, and takes what is typed until the answer comes. */
  @Test
  void aReportOfTheMouseAsksTheTerminalNothing() throws Exception {
    try (FakeTerminal terminal = new FakeTerminal(80, 24)) {
      for (KeyMap<Binding> keys : new LineEditor(terminal).getKeyMaps().values()) {
        assertThat(keys.getBoundKeys().values()).doesNotContain(new Reference("mouse"));
      }
    }
  }

  /** So that what is pasted before the next prompt is no answer to it. */
  @Test
  void pastesAreBracketedBetweenLinesToo() throws Exception {
    try (FakeTerminal terminal = new FakeTerminal(80, 24)) {
      try (TerminalSource source = new TerminalSource(terminal)) {
        terminal.type("one\r");
        assertThat(source.readLine("> ", List.of())).isEqualTo("one");
        String sent = terminal.sent();
        assertThat(sent.lastIndexOf("\u001b[?2004h")).isGreaterThan(sent.lastIndexOf("?2004l"));
      }
      OwnSequences.restored(terminal.sent());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u001b[<35;10;5M",
        "\u001b[M !!",
        "\u001b[I",
        "\u001b[?62;22c",
        "\u001b[24;80R",
        "\u001b[?2004;1$y",
        "\u001b]11;rgb:ffff/ffff/ffff\u0007",
        "\u001b]10;rgb:0000/0000/0000\u001b\\",
        "\u001bP>|terminal 1.0\u001b\\"
      })
  void reportsThatNobodyAskedForAreNothing(String report) throws Exception {
    try (FakeTerminal terminal = new FakeTerminal(80, 24)) {
      assertThat(line(terminal, "a" + report + "b" + report + report + "\r")).isEqualTo("ab");
    }
  }

  @Test
  void anInterruptComesBeforeWhatWasTyped() throws Exception {
    try (FakeTerminal terminal = new FakeTerminal(80, 24);
        TerminalSource source = new TerminalSource(terminal)) {
      terminal.type("one\rtwo\r");
      assertThat(source.readLine("> ", List.of())).isEqualTo("one");
      terminal.raise(Terminal.Signal.INT);
      assertThrows(LineSource.StopKeyException.class, () -> source.readLine("> ", List.of()));
    }
  }

  @Test
  void neitherHangsNorBreaksNorSendsAnythingRaw() throws Exception {
    ExecutorService other = Executors.newSingleThreadExecutor();
    for (int i = 0; i < Draws.of(TERMINALS); i++) {
      Hostile hostile = new Hostile(SEED + i);
      try (FakeTerminal terminal = new FakeTerminal(80, 24)) {
        try (TerminalSource source = new TerminalSource(terminal)) {
          Future<?> done = other.submit(() -> send(terminal, hostile));
          assertWithMessage("seed %s", i).that(stopped(source)).isTrue();
          done.get(20, TimeUnit.SECONDS);
        }
        OwnSequences.only(terminal.sent());
        OwnSequences.restored(terminal.sent());
      }
    }
    other.shutdown();
  }

  private static boolean stopped(TerminalSource source) throws IOException {
    try {
      while (true) {
        source.readLine("> ", List.of("low", "high"));
      }
    } catch (LineSource.StopKeyException e) {
      return true;
    }
  }

  private static void send(FakeTerminal terminal, Hostile hostile) {
    for (int i = 0; i < SENT; i++) {
      terminal.type(hostile.next(4096));
      if (hostile.once(4)) {
        terminal.resize(hostile.size());
      }
    }
    terminal.raise(Terminal.Signal.INT);
  }
}
