package quarterturn.platform;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.Draws;
import quarterturn.unit.Pasted;

class PastesTest {
  private static final int RANDOM = 300;
  private static final long SEED = 20270615;
  private static final Duration AT_ONCE = Duration.ofMillis(1);
  private static final Duration LATER = Duration.ofMillis(200);

  private final Pastes pastes = new Pastes();
  private long now = 1;

  private String pass(String text, Duration after) {
    now += after.toNanos();
    byte[] bytes = text.getBytes(ISO_8859_1);
    return new String(pastes.pass(bytes, bytes.length, now), ISO_8859_1);
  }

  private static String paste(String text) {
    return Pastes.BEGIN + text + Pastes.END;
  }

  @Test
  void whatIsTypedGoesOnAsItIs() {
    assertThat(pass("u\r\u001b[A", LATER)).isEqualTo("u\r\u001b[A");
    assertThat(pass("\u001b", LATER)).isEqualTo("\u001b");
    assertThat(pass("[20~x", AT_ONCE)).isEqualTo("[20~x");
  }

  @Test
  void ofAMegabyteFourKilobytesGoOnAndAMark() {
    String taken = "x".repeat(Pasted.MOST);
    StringBuilder out = new StringBuilder(pass("a" + Pastes.BEGIN, LATER));
    for (int i = 0; i < 250; i++) {
      out.append(pass("x".repeat(4096), AT_ONCE));
    }
    out.append(pass(Pastes.END + "b", AT_ONCE));
    assertThat(out.toString()).isEqualTo("a" + paste(taken + Pasted.LEFT_OUT) + "b");
  }

  @Test
  void howeverItIsSplitItIsTheSame() {
    Random random = new Random(SEED);
    String sent = "ab" + paste("one\u001b[201\r\u001b\u001b[20") + "c" + paste("") + "\u001b[200d";
    for (int i = 0; i < Draws.of(RANDOM); i++) {
      StringBuilder out = new StringBuilder();
      int from = 0;
      while (from < sent.length()) {
        int to = Math.min(sent.length(), from + 1 + random.nextInt(9));
        out.append(pass(sent.substring(from, to), AT_ONCE));
        from = to;
      }
      assertWithMessage("draw %s", i).that(out.toString()).isEqualTo(sent);
      // So that the next one begins anew.
      pass("e", LATER);
    }
  }

  @Test
  void aTerminalWithoutBracketsIsKnownByItsHaste() {
    String much = "0.30 passes\r".repeat(40);
    assertThat(pass(much, LATER)).isEqualTo(paste(much));
    // The rest of it is short, and no Enter.
    assertThat(pass("u\r", AT_ONCE)).isEqualTo(paste("u\r"));
    assertThat(pass("u\r", LATER)).isEqualTo("u\r");
  }

  @Test
  void ofAMegabyteInHasteFourKilobytesGoOn() {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < 250; i++) {
      out.append(pass("x".repeat(4096), AT_ONCE));
    }
    assertThat(out.toString())
        .isEqualTo(paste("x".repeat(Pasted.MOST)) + paste("" + Pasted.LEFT_OUT));
  }

  @Test
  void bracketsEndTheHaste() {
    String much = "x".repeat(500);
    assertThat(pass(much + "\u001b[20", LATER)).isEqualTo(paste(much));
    assertThat(pass("0~y\u001b[201~", AT_ONCE)).isEqualTo(paste("y"));
    assertThat(pass("\r", AT_ONCE)).isEqualTo("\r");
  }

  @Test
  void aPasteThatNeverEndsIsOverWhenNothingCameForLong() {
    assertThat(pass(Pastes.BEGIN + "x", LATER)).isEqualTo(Pastes.BEGIN + "x");
    assertThat(pass("y", Duration.ofSeconds(1))).isEqualTo("y");
    pass("z".repeat(9000), AT_ONCE);
    assertThat(pass("u", AT_ONCE)).isEmpty();
    assertThat(pass("u\r", Duration.ofSeconds(3))).isEqualTo("u\r");
  }

  @Test
  void whateverComesLittleGoesOn() {
    Random random = new Random(SEED);
    long out = 0;
    byte[] bytes = new byte[4096];
    for (int i = 0; i < Draws.of(RANDOM); i++) {
      random.nextBytes(bytes);
      now += AT_ONCE.toNanos();
      out += pastes.pass(bytes, bytes.length, now).length;
    }
    assertThat(out).isAtMost(3 * Pasted.MOST);
  }
}
