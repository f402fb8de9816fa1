package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.lesson.Direction;
import quarterturn.lesson.Prediction;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Bench;
import quarterturn.unit.NotUnderstoodException;

class ExpectingTest {
  private static final Expecting GAP =
      new Expecting(Quantity.RELIEF, Map.of(Quantity.RELIEF, new Bench.Plausible(0, 3)));
  private static final Expecting WAY = new Expecting(null, Map.of());

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.35|0.35|",
        ".4 so I think|0.4|so I think",
        "0,30 it was tightened|0.3|it was tightened",
        "0.5 mm, because heavier strings pull|0.5|heavier strings pull",
        "0.5mm|0.5|",
        "12 thou nothing was done|0.3048|nothing was done",
        "touches it looks straight|0|it looks straight",
      })
  void aGapIsPredictedInMillimetres(String line, double size, @Nullable String reason) {
    Prediction made = GAP.made(line, false);
    assertThat(made.direction()).isNull();
    assertThat(made.size()).isWithin(1e-9).of(size);
    assertThat(made.reason()).isEqualTo(reason);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tighten|MORE|",
        "t|MORE|",
        "LOOSEN: it touches|LESS|it touches",
        "no turn it stands in the window|SAME|it stands in the window",
        "n|SAME|",
      })
  void aTurnIsPredictedByItsWay(String line, Direction way, @Nullable String reason) {
    assertThat(WAY.made(line, true)).isEqualTo(new Prediction(way, 0, reason, true));
  }

  @ParameterizedTest
  @CsvSource({
    "tighten",
    "1/8",
    "much",
    "0.30 0.35",
    "''",
    "1 0.30",
  })
  void whatIsNoGapIsAskedAgain(String line) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> GAP.made(line, false));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo("\"" + line + "\" is no answer here. The gap in mm, for example 0.35.");
  }

  @ParameterizedTest
  @CsvSource({"35", "5mm", "-0.3"})
  void aGapThatNoReadingCanBeIsAskedAgain(String line) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> GAP.made(line, false));
    assertThat(e)
        .hasMessageThat()
        .isEqualTo("\"" + line + "\" is not plausible for relief, which lies between 0 and 3 mm.");
  }

  @ParameterizedTest
  @CsvSource({"0.35", "1/8", "up", "smaller", "2"})
  void whatIsNoWayIsAskedAgain(String line) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> WAY.made(line, false));
    assertThat(e).hasMessageThat().contains("Tighten, loosen or no turn, for example tighten.");
  }

  @ParameterizedTest
  @CsvSource({"INTONATION,-3,3", "ACTION,2.25,2.25", "PICKUP_GAP,2.5,2.5"})
  void otherReadingsHaveTheirOwnUnit(Quantity quantity, String line, double size) {
    Expecting expecting = new Expecting(quantity, Map.of());
    assertThat(expecting.made(line, false).size()).isEqualTo(size);
    assertThat(expecting.asks()).endsWith(quantity.unit());
    assertThat(expecting.fits(expecting.example())).isTrue();
  }
}
