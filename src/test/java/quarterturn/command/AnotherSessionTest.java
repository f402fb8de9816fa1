package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** A second session on an instrument begins only where that is said, also for a program. */
@Isolated
class AnotherSessionTest {
  private static final String COUNTS = "The turn that was asked for, tighten 1/8 turn, then counts";

  @TempDir Path folder;
  private Shop shop = new Shop(Path.of("unset"));
  private String half = "";

  @BeforeEach
  void aTurnIsHalfMade() throws Exception {
    shop = Shop.of(folder, "blue");
    half = LeftOff.half(shop, "blue");
  }

  private Captured start(String in, String... more) {
    String[] args = new String[4 + more.length];
    System.arraycopy(new String[] {"start", "setup", "--instrument", "blue"}, 0, args, 0, 4);
    System.arraycopy(more, 0, args, 4, more.length);
    return Captured.of(shop, in, Captured.at(folder, args));
  }

  private int sessions() throws Exception {
    return shop.store().sessions().size();
  }

  @Test
  void onAPipeItIsAskedAndTheFirstAnswerGoesOn() throws Exception {
    Captured run = start("1\nquit\n");
    assertThat(run.out()).contains("Session " + half + ".");
    assertThat(run.out().replaceAll("\\s+", " ")).contains(COUNTS + " as made.");
    assertThat(sessions()).isEqualTo(1);
  }

  @Test
  void aProgramIsAskedToo() throws Exception {
    Captured run = start("{\"answer\":\"" + half + "\"}\n", "--lines");
    assertThat(run.out()).contains("\"options\":[\"" + half + "\",\"another\"]");
    assertThat(run.out()).contains(COUNTS + " as made.");
    assertThat(run.out()).contains("\"step\":\"welcome-back\"");
    assertThat(sessions()).isEqualTo(1);
  }

  @Test
  void whoSaysSoBeginsAnotherUnaskedAndIsToldWhatItCounts() throws Exception {
    Captured run = start("", "--lines", "--another");
    assertThat(run.out().lines().findFirst().orElse("")).contains(COUNTS + " as made.");
    assertThat(run.out()).doesNotContain("\"another\"");
    assertThat(sessions()).isEqualTo(2);
  }

  @Test
  void anInstrumentIsNamedWithIt() {
    Captured run =
        Captured.of(shop, "", Captured.at(folder, "start", "relief", "--another", "--plain"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("--another goes with --instrument");
  }
}
