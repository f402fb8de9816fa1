package quarterturn.lesson;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.unit.Bracket;

class SpreadTest {
  private static final Bracket A = new Bracket(0.30, 0.35);
  private static final Bracket B = new Bracket(0.35, 0.40);
  private static final Bracket C = new Bracket(0.25, 0.30);

  private static Spread all(Bracket... readings) {
    return requireNonNull(Spread.of(List.of(readings), readings.length));
  }

  @Test
  void nothingIsSaidBeforeAllAreIn() {
    assertThat(Spread.of(List.of(A, B), 3)).isNull();
    assertThat(Spread.of(List.of(), 0)).isNull();
  }

  @Test
  void theSpreadComesBeforeTheMean() {
    Spread spread = all(A, B, C);
    assertThat(spread.readings()).containsExactly(C, A, B).inOrder();
    assertThat(spread.extent()).isEqualTo(new Bracket(0.25, 0.40));
    assertThat(spread.agree()).isFalse();
    assertThat(spread.lines())
        .containsExactly(
            "You read 0.25 to 0.30 mm; 0.30 to 0.35 mm; 0.35 to 0.40 mm.",
            "No one gap explains them all: talk about how each of you held and read.",
            "Their mean is 0.30 to 0.35 mm.")
        .inOrder();
  }

  @Test
  void readingsThatShareAGapAgree() {
    assertThat(all(A, B).agree()).isTrue();
    assertThat(all(A).agree()).isTrue();
  }

  @Test
  void openReadingsHaveNoMean() {
    Spread spread = all(Bracket.touches(), A);
    assertThat(spread.mean()).isNull();
    assertThat(spread.lines().get(2)).contains("no mean");
    assertThat(all(Bracket.touches(), Bracket.passes(1)).extent()).isNull();
  }
}
