package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;

class PrintableTest {
  @Test
  void whatPeopleWriteStaysAsItIs() {
    String text = "größer 0,30 mm, 45°, E♭, 弦, é, 𝄞, \"quoted\" \\";
    assertThat(Printable.of(text)).isEqualTo(text);
    assertThat(Printable.of("")).isEmpty();
  }

  @Test
  void noControlCharacterGetsThrough() {
    for (int c = 0; c < 0xA0; c++) {
      boolean control = c < 0x20 || c >= 0x7F;
      assertThat(Printable.shown(c)).isEqualTo(!control);
    }
    assertThat(Printable.of("a\u001b[31mb\u009b2J\r\n\t\u0000"))
        .isEqualTo("a\ufffd[31mb\ufffd2J\ufffd\ufffd\ufffd\ufffd");
  }

  /** Format characters reorder or hide the text around them; line characters break a line. */
  @Test
  void noFormatOrLineCharacterGetsThrough() {
    String hidden = "\u202e\u2066\u200b\u200f\ufeff\u00ad\u2028\u2029\ue000\ufdd0";
    assertThat(Printable.of(hidden)).isEqualTo("\ufffd".repeat(hidden.length()));
    assertThat(Printable.of(new String(Character.toChars(0xE0041)))).isEqualTo("\ufffd");
  }

  @Test
  void halfASurrogatePairIsReplaced() {
    assertThat(Printable.of("a\ud834b")).isEqualTo("a\ufffdb");
    assertThat(Printable.of("\udd1e")).isEqualTo("\ufffd");
  }
}
