package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.unit.NotUnderstoodException;

class HeldTest {
  @Test
  void theUsualHoldIsAtTheFirstFret() {
    assertThat(Held.at(17, 7)).isEqualTo(new Held(1, 17, 7));
  }

  @ParameterizedTest
  @CsvSource({"0, 2, 1", "0, 36, 35", "1, 36, 2", "1, 3, 2"})
  void theTightestHoldsAreTaken(int low, int high, int readAt) {
    Held held = new Held(low, high, readAt);
    assertThat(held.low()).isEqualTo(low);
    assertThat(held.high()).isEqualTo(high);
    assertThat(held.readAt()).isEqualTo(readAt);
  }

  @ParameterizedTest
  @CsvSource({"1, 17, 1", "1, 17, 17", "1, 17, 0", "1, 17, 18", "7, 7, 7", "17, 1, 7"})
  void theFretReadLiesStrictlyBetween(int low, int high, int readAt) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> new Held(low, high, readAt));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo(
            "the fret read must lie between the frets held, not "
                + low
                + ", "
                + readAt
                + " and "
                + high);
  }

  @ParameterizedTest
  @CsvSource({"-1, 17, 7, -1", "1, 37, 7, 37"})
  void theFretsHeldAreFrets(int low, int high, int readAt, int wrong) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> new Held(low, high, readAt));
    assertThat(e).hasMessageThat().isEqualTo("a fret must lie between 0 and 36, not " + wrong);
  }
}
