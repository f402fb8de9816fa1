package quarterturn.screen.terminal;

import static com.google.common.truth.Truth.assertThat;

import java.nio.charset.StandardCharsets;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.impl.jni.JniNativePty;
import org.jline.terminal.impl.jni.JniTerminalProvider;
import org.jline.terminal.impl.jni.linux.LinuxNativePty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

class SteadyTerminalTest {
  /** JLine closes it by itself while the program is told to end and its threads go on. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void whatIsDoneToItOnceItIsClosedHasNoEffect() throws Exception {
    JniNativePty pty =
        LinuxNativePty.open(new JniTerminalProvider(), new Attributes(), new Size(140, 45));
    SteadyTerminal terminal =
        new SteadyTerminal("dumb", new SteadyPty(pty), StandardCharsets.UTF_8);
    assertThat(terminal.getSize()).isEqualTo(new Size(140, 45));
    terminal.close();
    assertThat(terminal.getSize()).isEqualTo(new Size(140, 45));
    terminal.enterRawMode();
    terminal.setAttributes(terminal.getAttributes());
    terminal.writer().println("late");
    terminal.flush();
    assertThat(terminal.writer().checkError()).isFalse();
  }
}
