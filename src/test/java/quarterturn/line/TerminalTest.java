package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The typed face at a real terminal. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
@Tag("slow")
class TerminalTest {
  /** A terminal with the program in it. */
  private static final class Session implements AutoCloseable {
    private final PtyProcess process;
    private final StringBuilder shown = new StringBuilder();

    Session() throws IOException {
      Map<String, String> environment = new HashMap<>(System.getenv());
      environment.put("TERM", "xterm");
      process =
          new PtyProcessBuilder(
                  new String[] {
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    "quarterturn.line.TypedAtTerminal"
                  })
              .setEnvironment(environment)
              .setInitialColumns(80)
              .setInitialRows(24)
              .start();
    }

    /** Reads on until {@code text} has been shown since the last call. */
    Session until(String text) throws IOException {
      InputStream in = process.getInputStream();
      int c;
      while (shown.indexOf(text) < 0 && (c = in.read()) >= 0) {
        shown.append((char) c);
      }
      assertThat(shown.toString()).contains(text);
      shown.setLength(0);
      return this;
    }

    Session type(String keys) throws IOException {
      process.getOutputStream().write(keys.getBytes(StandardCharsets.UTF_8));
      process.getOutputStream().flush();
      return this;
    }

    int status() throws InterruptedException {
      assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
      return process.exitValue();
    }

    @Override
    public void close() {
      process.destroyForcibly();
    }
  }

  @Test
  void tabCompletesAnOption() throws Exception {
    try (Session session = new Session()) {
      session.until("when it is done.").until("> ").type("\r");
      session.until("Enter alone does not.").until("> ").type("und\t\r");
      session.until("Where is the rod nut?").until("> ").type("sou\t\r");
      session.until("Taken: In the sound hole").until("> ").type("quit\r");
      session.until("answers: 3, left: true").until("children: 0");
      assertThat(session.status()).isEqualTo(0);
    }
  }

  @Test
  void controlDLeavesInOrder() throws Exception {
    try (Session session = new Session()) {
      session.until("when it is done.").until("> ").type("\u0004");
      session.until("answers: 0, left: true");
      assertThat(session.status()).isEqualTo(0);
    }
  }

  @Test
  void controlCLeavesInOrder() throws Exception {
    try (Session session = new Session()) {
      session.until("when it is done.").until("> ").type("half\u0003");
      session.until("Left: the rod stands as found").until("answers: 0, left: true");
      assertThat(session.status()).isEqualTo(130);
    }
  }

  @Test
  void controlCEndsAWaitInOrder() throws Exception {
    try (Session session = new Session()) {
      session.until("when it is done.").until("> ").type("\r");
      session.until("Enter alone does not.").until("> ").type("u\r");
      session.until("Where is the rod nut?").until("> ").type("1\r");
      session.until("has passed.").until("> ").type("wait\r");
      session.until("Time left: 10 minutes.").type("\u0003");
      session.until("answers: 3, left: true");
      assertThat(session.status()).isEqualTo(130);
    }
  }
}
