package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.Writer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(10)
class PipeSourceTest {
  private static PipeSource source(String typed) {
    return new PipeSource(new StringReader(typed), new PrintWriter(Writer.nullWriter()), false);
  }

  @Test
  void whereNobodyIsLeftToTypeWaitingEnds() throws Exception {
    assertThat(source("").await(() -> false, (line, after) -> false)).isEqualTo("quit");
  }

  @Test
  void whatWasTypedAheadWaitsOn() throws Exception {
    long end = System.nanoTime() + 400_000_000;
    PipeSource source = source("0.30\n");
    assertThat(source.await(() -> System.nanoTime() > end, (line, after) -> false)).isNull();
    assertThat(source.readLine("> ", List.of())).isEqualTo("0.30");
  }
}
