package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import org.jline.terminal.Terminal;
import org.junit.jupiter.api.Test;
import quarterturn.unit.Dates;

class TypingTest {
  private static Terminal none() throws IOException {
    throw new IOException("no terminal is wanted here");
  }

  private static String played(String term, boolean console) throws Exception {
    byte[] typed = "fértig\ndone\n".getBytes(StandardCharsets.UTF_8);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ScriptedBench bench = new ScriptedBench(Invented.tell(), Invented.done());
    try (Typing typing =
        Typing.open(term, console, TypingTest::none, new ByteArrayInputStream(typed), out)) {
      assertThat(typing.source().typedByHand()).isEqualTo(console);
      LineFace.run(bench, typing.source(), typing.out(), new Dates(ZoneOffset.UTC));
    }
    // A person is asked again; a script ends.
    assertThat(bench.answers()).hasSize(console ? 1 : 0);
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void aPipeIsPlainAndShowsWhatWasSent() throws Exception {
    String shown = played("xterm", false);
    assertThat(shown).contains("> fértig\n\"fértig\" is not taken here. Press Enter");
    assertThat(shown).doesNotContain("\u001b");
  }

  @Test
  void aDumbTerminalShowsItselfWhatIsTyped() throws Exception {
    String shown = played("dumb", true);
    assertThat(shown).contains("> \"fértig\" is not taken here. Press Enter");
    assertThat(shown).doesNotContain("\u001b");
  }
}
