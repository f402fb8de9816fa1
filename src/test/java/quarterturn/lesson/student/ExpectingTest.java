package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.lesson.Direction;
import quarterturn.lesson.Prediction;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.NotUnderstoodException;

class ExpectingTest {
  private static final Expecting READING = Expecting.of(Quantity.RELIEF, true);
  private static final Expecting TURN = Expecting.of(null, true);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "smaller 0.35 the rod pulls it back|LESS|0.35|the rod pulls it back",
        "larger, 0.5 mm, because heavier strings pull|MORE|0.5|heavier strings pull",
        "2 12 thou nothing was done|SAME|0.3048|nothing was done",
        "same .4 so I think|SAME|0.4|so I think",
        "less 0,30 it was tightened|LESS|0.3|it was tightened",
        "smaller touches it looks straight|LESS|0|it looks straight",
        "small 0.30..0.35 a leaf more|LESS|0.325|a leaf more",
      })
  void aReadingIsPredictedInOneLine(String line, Direction way, double size, String reason) {
    Prediction made = READING.with(line).made();
    assertThat(made.direction()).isEqualTo(way);
    assertThat(made.size()).isWithin(1e-9).of(size);
    assertThat(made.reason()).isEqualTo(reason);
    assertThat(made.helped()).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tighten 1/8 the gap is large|MORE|0.125|the gap is large",
        "loosen 45 deg: it touches|LESS|0.125|it touches",
        "no turn it stands in the window|SAME|0|turn it stands in the window",
        "3 1/16 turn only a little is missing|MORE|0.0625|only a little is missing",
      })
  void aTurnIsPredictedInOneLine(String line, Direction way, double size, String reason) {
    assertThat(TURN.with(line).made()).isEqualTo(new Prediction(way, size, reason, false));
  }

  @Test
  void whatIsMissingIsAskedForInTurn() {
    Expecting made = READING;
    assertThat(made.next()).isEqualTo(Expecting.Part.WAY);
    made = made.with("larger");
    assertThat(made.next()).isEqualTo(Expecting.Part.SIZE);
    made = made.withHelp().with("0.4 mm");
    assertThat(made.next()).isEqualTo(Expecting.Part.REASON);
    made = made.with("more pull");
    assertThat(made.next()).isNull();
    assertThat(made.made()).isEqualTo(new Prediction(Direction.MORE, 0.4, "more pull", true));
  }

  @Test
  void aFirstReadingGoesNoWay() {
    Expecting first = Expecting.of(Quantity.HUMIDITY, false);
    assertThat(first.with("48 the heating is off").made())
        .isEqualTo(new Prediction(Direction.SAME, 48, "the heating is off", false));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "up 0.3 so|\"up\" is no way it can go. Which way: 1 smaller, 2 the same, 3 larger?",
        "s 0.3 so|\"s\" is no way it can go",
        "4 0.3 so|\"4\" is no way it can go",
        "larger much so|\"much\" is no size. How much, in mm, for example 0.35?",
        "''|Which way",
      })
  void aSlipIsNamedAndNothingIsTaken(String line, String says) {
    NotUnderstoodException e = assertThrows(NotUnderstoodException.class, () -> READING.with(line));
    assertThat(e).hasMessageThat().contains(says);
  }
}
