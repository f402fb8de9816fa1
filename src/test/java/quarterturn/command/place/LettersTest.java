package quarterturn.command.place;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said where a locale can't hold a letter; that it does happen, the jar's test shows. */
class LettersTest {
  private static final String ASCII = "ANSI_X3.4-1968";
  private static final String SAID =
      "\"\ufffd\ufffd/x\" has letters that the locale here (ANSI_X3.4-1968) can't hold;"
          + " set LC_ALL=C.UTF-8 and try again";

  @Test
  void aWordThatWasNotReadIsNamedWithWhatToSet() {
    assertThat(Letters.unread(List.of("log", "\ufffd\ufffd/x"), ASCII)).isEqualTo(SAID);
    assertThat(Letters.unread(List.of("log", "x"), ASCII)).isNull();
    assertThat(Letters.unread(List.of("\ufffd"), "UTF-8")).isNull();
    assertThat(Letters.unread(List.of("\ufffd"), "utf8")).isNull();
  }

  @Test
  void soIsAPathHoweverDeepItIsFound() {
    InvalidPathException path = new InvalidPathException("\ufffd\ufffd/x", "unmappable");
    assertThat(Letters.of(new IllegalStateException(path), ASCII)).isEqualTo(SAID);
    assertThat(Letters.of(new IllegalStateException("other"), ASCII)).isNull();
    InvalidPathException nul =
        assertThrows(InvalidPathException.class, () -> Path.of("a\0b").toAbsolutePath());
    assertThat(Letters.of(nul, ASCII)).isEqualTo("\"a\ufffdb\" can be no path; write another");
  }
}
