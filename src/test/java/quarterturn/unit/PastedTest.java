package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.Draws;

class PastedTest {
  private static final int RANDOM = 60;
  private static final long SEED = 20270614;

  private static String text(String raw) {
    Pasted pasted = Pasted.of(raw);
    assertThat(pasted.whole()).isTrue();
    return pasted.text();
  }

  @Test
  void aLineEndIsNoEnterAndTwoLinesAreNotReadAsOne() {
    assertThat(text("0.30 passes\r\n0.35 lifts\r\n")).isEqualTo("0.30 passes; 0.35 lifts");
    assertThat(text("\r\r u \n\n y\r")).isEqualTo("u; y");
    assertThat(text("\n")).isEmpty();
    assertThat(text("a\u2028b\u2029c\u0085d\u000be\u000cf")).isEqualTo("abcdef");
  }

  @Test
  void tabsAreBlanksAndControlCharactersAreNothing() {
    assertThat(text("low\t.38")).isEqualTo("low .38");
    assertThat(text("a\u0003b\u0000c\u007fd\u202ee\ue000f")).isEqualTo("abcdef");
  }

  @Test
  void sequencesOfATerminalAreNothing() {
    assertThat(text("\u001b[31mred\u001b[0m \u001b]8;;x:y\u0007link\u001b]8;;\u001b\\"))
        .isEqualTo("red link");
    assertThat(text("\u001b[<35;10;5M\u001b[M !!a\u001bOPb\u001bP1$r0m\u001b\\c\u009b1md\u001b"))
        .isEqualTo("abcd");
  }

  @Test
  void noMoreThanFourKilobytesAreTakenAndNoCharacterIsCut() {
    Pasted pasted = Pasted.of("é".repeat(3000));
    assertThat(pasted.text()).isEqualTo("é".repeat(Pasted.MOST / 2));
    assertThat(pasted.whole()).isFalse();
    assertThat(Pasted.of("ab🎸".repeat(900)).text()).endsWith("🎸ab");
    assertThat(Pasted.of("a".repeat(Pasted.MOST)).whole()).isTrue();
    assertThat(Pasted.of("short" + Pasted.LEFT_OUT).whole()).isFalse();
  }

  @Test
  void whatIsTypedAlreadyTakesRoom() {
    Pasted pasted = Pasted.of("12345");
    String line = "x".repeat(Pasted.MOST - 3);
    assertThat(pasted.fitting(line)).isEqualTo("123");
    assertThat(pasted.fits(line)).isFalse();
    assertThat(pasted.fits(line.substring(2))).isTrue();
    assertThat(Pasted.of("a" + Pasted.LEFT_OUT).fits("")).isFalse();
  }

  @Test
  void whateverIsPastedIsOneLineThatCanBeShown() {
    Random random = new Random(SEED);
    for (int i = 0; i < Draws.of(RANDOM); i++) {
      byte[] bytes = new byte[random.nextInt(6000)];
      random.nextBytes(bytes);
      String text = Pasted.of(new String(bytes, StandardCharsets.UTF_8)).text();
      assertWithMessage("draw %s", i).that(text).isEqualTo(Printable.of(text));
      assertThat(Pasted.bytes(text)).isAtMost(Pasted.MOST);
    }
  }
}
