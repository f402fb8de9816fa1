package quarterturn.screen.terminal;

import static com.google.common.truth.Truth.assertThat;

import com.googlecode.lanterna.TerminalSize;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.jline.terminal.Size;
import org.jline.terminal.impl.DumbTerminal;
import org.junit.jupiter.api.Test;

class BridgeTerminalTest {
  /** JLine closes its terminal by itself while the program is told to end, and something draws. */
  @Test
  void aClosedTerminalIsAsLargeAsItWas() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    boolean[] gone = {false};
    DumbTerminal terminal =
        new DumbTerminal(
            "invented",
            "dumb",
            new ByteArrayInputStream(new byte[0]),
            out,
            StandardCharsets.UTF_8) {
          @Override
          public Size getSize() {
            if (gone[0]) {
              throw new IllegalStateException("Terminal has been closed");
            }
            return new Size(140, 45);
          }
        };
    BridgeTerminal bridge = new BridgeTerminal(terminal, out);
    assertThat(bridge.findTerminalSize()).isEqualTo(new TerminalSize(140, 45));
    gone[0] = true;
    assertThat(bridge.findTerminalSize()).isEqualTo(new TerminalSize(140, 45));
  }
}
