package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.jline.terminal.Size;
import org.jline.terminal.impl.DumbTerminal;
import org.junit.jupiter.api.Test;

class FarewellTest {
  /** JLine closes its terminal by itself while the program is told to end. */
  @Test
  void nothingIsSaidToATerminalThatIsClosed() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DumbTerminal closed =
        new DumbTerminal(
            "invented",
            "dumb",
            new ByteArrayInputStream(new byte[0]),
            out,
            StandardCharsets.UTF_8) {
          @Override
          public Size getSize() {
            throw new IllegalStateException("Terminal has been closed");
          }
        };
    ScreenFace.say(closed, "Everything is kept.");
    assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
  }
}
