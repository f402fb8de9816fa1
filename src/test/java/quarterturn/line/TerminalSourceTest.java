package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.DumbTerminal;
import org.junit.jupiter.api.Test;

class TerminalSourceTest {
  private static TerminalSource typing(String keys) throws IOException {
    return new TerminalSource(
        new DumbTerminal(
            new ByteArrayInputStream(keys.getBytes(StandardCharsets.UTF_8)),
            new ByteArrayOutputStream()));
  }

  @Test
  void anInchMarkIsNoOpenQuote() throws Exception {
    try (TerminalSource source = typing(".012\" passes\n\\!1\n")) {
      assertThat(source.readLine("> ", List.of())).isEqualTo(".012\" passes");
      assertThat(source.readLine("> ", List.of())).isEqualTo("\\!1");
    }
  }

  @Test
  void theEndOfInputIsNull() throws Exception {
    try (TerminalSource source = typing("")) {
      assertThat(source.readLine("> ", List.of())).isNull();
    }
  }

  @Test
  void anInterruptEndsAPauseAndTheNextReading() throws Exception {
    DumbTerminal terminal =
        new DumbTerminal(new ByteArrayInputStream(new byte[0]), new ByteArrayOutputStream());
    try (TerminalSource source = new TerminalSource(terminal)) {
      terminal.raise(Terminal.Signal.INT);
      assertThrows(LineSource.StopKeyException.class, () -> source.pause(Duration.ofHours(1)));
      assertThrows(LineSource.StopKeyException.class, () -> source.readLine("> ", List.of()));
    }
  }

  @Test
  void anInterruptLeavesInOrder() {
    ScriptedBench bench = new ScriptedBench(Invented.tell(), Invented.done());
    LineSource stopping =
        new LineSource() {
          @Override
          public String readLine(String prompt, List<String> words) throws StopKeyException {
            throw new StopKeyException();
          }

          @Override
          public void pause(Duration time) {}

          @Override
          public boolean typedByHand() {
            return true;
          }

          @Override
          public int width() {
            return 80;
          }
        };
    java.io.StringWriter out = new java.io.StringWriter();
    int status =
        LineFace.run(
            bench,
            stopping,
            new java.io.PrintWriter(out),
            new quarterturn.unit.Dates(java.time.ZoneOffset.UTC));
    assertThat(status).isEqualTo(130);
    assertThat(bench.left()).isTrue();
    assertThat(out.toString()).contains("Left: the rod stands as found");
  }
}
