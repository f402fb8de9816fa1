package quarterturn.platform;

import static com.google.common.truth.Truth.assertThat;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.impl.jni.JniNativePty;
import org.jline.terminal.impl.jni.JniTerminalProvider;
import org.jline.terminal.impl.jni.linux.LinuxNativePty;
import org.jline.utils.InfoCmp;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import quarterturn.OwnSequences;

@EnabledOnOs(OS.LINUX)
class SteadyTerminalTest {
  private JniNativePty pty;

  @BeforeEach
  void open() throws IOException {
    pty = LinuxNativePty.open(new JniTerminalProvider(), new Attributes(), new Size(140, 45));
  }

  /** The program is continued while it reads: then JLine writes in two threads. */
  @Test
  @Timeout(20)
  void whatTwoThreadsWriteStaysInPieces() throws Exception {
    InfoCmp.setLoadedInfoCmp("xterm", InfoCmp.getDefaultInfoCmp("xterm"));
    int times = 500;
    SteadyTerminal terminal = new SteadyTerminal("xterm", new SteadyPty(pty), UTF_8);
    Runnable puts =
        () -> {
          for (int i = 0; i < times; i++) {
            terminal.puts(InfoCmp.Capability.keypad_xmit);
          }
        };
    Thread other = new Thread(puts);
    StringBuilder sent = new StringBuilder();
    Thread drain =
        new Thread(
            () -> {
              try (Reader in = new InputStreamReader(pty.getMasterInput(), UTF_8)) {
                while (!sent.toString().endsWith("end")) {
                  sent.append((char) in.read());
                }
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    drain.start();
    other.start();
    puts.run();
    other.join();
    terminal.writer().write("end");
    terminal.flush();
    drain.join();
    OwnSequences.only(sent.toString());
    assertThat(sent.toString().split("\u001b=", -1)).hasLength(2 * times + 1);
  }

  /** JLine closes it by itself while the program is told to end and its threads go on. */
  @Test
  void whatIsDoneToItOnceItIsClosedHasNoEffect() throws Exception {
    SteadyTerminal terminal = new SteadyTerminal("dumb", new SteadyPty(pty), UTF_8);
    assertThat(terminal.getSize()).isEqualTo(new Size(140, 45));
    terminal.close();
    assertThat(terminal.getSize()).isEqualTo(new Size(140, 45));
    terminal.enterRawMode();
    terminal.setAttributes(terminal.getAttributes());
    terminal.writer().println("late");
    terminal.flush();
    assertThat(terminal.writer().checkError()).isFalse();
  }

  @Test
  void whatIsAskedOfItOnceItsWindowIsClosedDoesNotFail() throws Exception {
    SteadyTerminal terminal = new SteadyTerminal("dumb", new SteadyPty(pty), UTF_8);
    assertThat(terminal.getSize()).isEqualTo(new Size(140, 45));
    pty.getMasterInput().close();
    assertThat(terminal.getSize()).isEqualTo(new Size(140, 45));
    terminal.setAttributes(SteadyTerminal.raw(terminal.getAttributes()));
  }
}
