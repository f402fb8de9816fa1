package quarterturn.screen.terminal;

import static com.google.common.truth.Truth.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class GatedOutputTest {
  private final ByteArrayOutputStream terminal = new ByteArrayOutputStream();
  private final GatedOutput gate = new GatedOutput(terminal);

  private static void write(GatedOutput gate, String text) throws IOException {
    gate.write(text.getBytes(StandardCharsets.US_ASCII));
  }

  @Test
  void nothingPassesBeforeItIsOpenNorAfterItIsShut() throws IOException {
    write(gate, "early ");
    gate.open(out -> out.write('('));
    write(gate, "drawn");
    gate.shut(out -> out.write(')'));
    write(gate, " late");
    gate.flush();
    assertThat(terminal.toString(StandardCharsets.US_ASCII)).isEqualTo("(drawn)");
  }

  @Test
  void isGivenBackOnceHoweverManyTry() throws Exception {
    gate.open(out -> out.write('('));
    AtomicInteger times = new AtomicInteger();
    List<Thread> threads = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      Thread thread =
          new Thread(
              () -> {
                try {
                  write(gate, "x");
                  gate.shut(out -> times.incrementAndGet());
                  write(gate, "y");
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              });
      threads.add(thread);
      thread.start();
    }
    for (Thread thread : threads) {
      thread.join();
    }
    assertThat(times.get()).isEqualTo(1);
    assertThat(terminal.toString(StandardCharsets.US_ASCII)).doesNotContain("y");
  }

  @Test
  void canBeOpenedAgain() throws IOException {
    gate.open(out -> out.write('a'));
    gate.shut(out -> out.write('b'));
    gate.open(out -> out.write('c'));
    write(gate, "d");
    assertThat(terminal.toString(StandardCharsets.US_ASCII)).isEqualTo("abcd");
  }
}
