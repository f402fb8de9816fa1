package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines and text as RFC 5545 has them. */
class CalendarTextTest {
  private static String line(String name, String value) {
    return new CalendarText().line(name, value).toString();
  }

  private static int octets(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }

  /** RFC 5545, section 3.1: lines "are delimited by a line break, which is a CRLF sequence". */
  @Test
  void aLineEndsWithCarriageReturnAndLineFeed() {
    assertThat(line("VERSION", "2.0")).isEqualTo("VERSION:2.0\r\n");
  }

  /**
   * RFC 5545, section 3.1: "Lines of text SHOULD NOT be longer than 75 octets, excluding the line
   * break", and a break may be put in followed "by a single linear white-space character".
   */
  @Test
  void aLineOfSeventyFiveOctetsStandsAndTheNextOctetIsFolded() {
    String full = "x".repeat(73);
    assertThat(line("A", full)).isEqualTo("A:" + full + "\r\n");
    assertThat(line("A", full + "y")).isEqualTo("A:" + full + "\r\n y\r\n");
    assertThat(line("A", full + "y".repeat(74)))
        .isEqualTo("A:" + full + "\r\n " + "y".repeat(74) + "\r\n");
    assertThat(line("A", full + "y".repeat(75)))
        .isEqualTo("A:" + full + "\r\n " + "y".repeat(74) + "\r\n y\r\n");
  }

  /**
   * Section 3.1 counts octets and warns of folding "in the middle of a UTF-8 multi-octet sequence".
   */
  @Test
  void noCharacterIsCut() {
    for (String character : List.of("é", "琴", "🎸")) {
      for (int before = 60; before < 80; before++) {
        String value = "x".repeat(before) + character.repeat(50);
        String folded = line("A", value);
        for (String part : folded.split("\r\n", -1)) {
          assertThat(octets(part)).isAtMost(75);
          assertThat(part).doesNotContainMatch("\\p{Cs}");
        }
        assertThat(folded.replace("\r\n ", "")).isEqualTo("A:" + value + "\r\n");
      }
    }
  }

  /**
   * RFC 5545, section 3.3.11: BACKSLASH, COMMA, SEMICOLON and line breaks in a TEXT value are
   * written with a backslash, "a newline by a BACKSLASH followed by n or N"; a COLON is not.
   */
  @Test
  void textIsEscaped() {
    assertThat(CalendarText.escaped("a\\b;c,d\ne:f\"g")).isEqualTo("a\\\\b\\;c\\,d\\ne:f\"g");
    assertThat(CalendarText.escaped("\\n")).isEqualTo("\\\\n");
    assertThat(CalendarText.escaped("\\\n")).isEqualTo("\\\\\\n");
    assertThat(CalendarText.escaped("a\r\nb\rc\n\nd")).isEqualTo("a\\nb\\nc\\n\\nd");
  }

  /** Section 3.1: TSAFE-CHAR and VALUE-CHAR leave out the controls other than HTAB. */
  @Test
  void controlCharactersHaveNoPlace() {
    assertThat(CalendarText.escaped("a\u0000b\u001bc\u007fd\u0085e\u2028f\ud800g"))
        .isEqualTo("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe\uFFFDf\uFFFDg");
  }
}
