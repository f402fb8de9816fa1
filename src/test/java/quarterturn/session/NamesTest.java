package quarterturn.session;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.unit.NotUnderstoodException;

class NamesTest {
  @Test
  void aNameIsKeptInSmallLetters() {
    assertThat(Names.check("an instrument", " Practice-Bass2 ")).isEqualTo("practice-bass2");
    assertThat(Names.check("an instrument", "7")).isEqualTo("7");
    assertThat(Names.check("an instrument", "a".repeat(41))).isEqualTo("a".repeat(41));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "..",
        "../x",
        "a/b",
        "a\\b",
        "/etc",
        "c:x",
        ".hidden",
        "-dash",
        "a b",
        "a.b",
        "a\u0000",
        "a\nb",
        "a\u001b[2J",
        "naïve",
        "con",
        "NUL",
        "com1",
        "lpt9",
        "ı"
      })
  void whatCouldLeadElsewhereIsRefused(String typed) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> Names.check("an instrument", typed));
    assertThat(e).hasMessageThat().contains("can't name an instrument; use letters a to z");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @Test
  void aNameIsNoLongerThanAFileSystemLikes() {
    assertThrows(NotUnderstoodException.class, () -> Names.check("an instrument", "a".repeat(42)));
  }

  @Test
  void aSessionIsNamedForItsDayAndProcedureAndByChance() {
    Random random = new Random(1);
    LocalDate day = LocalDate.of(2027, 3, 1);
    String one = Names.session(day, "relief", random);
    assertThat(one).matches("2027-03-01-relief-[0-9a-hjkmnp-tv-z]{4}");
    assertThat(Names.session(day, "relief", random)).isNotEqualTo(one);
    assertThat(Names.session(day, "Mine: " + "long ".repeat(9), random))
        .matches("2027-03-01-mine-long-long-long-long-.{4}");
  }
}
