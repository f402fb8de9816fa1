package quarterturn.screen.page;

import static com.google.common.truth.Truth.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.screen.Invented;
import quarterturn.session.Overview;
import quarterturn.unit.Turn;

/** A turn that nobody is sure of, in the foot and in the log. */
class TrailTest {
  private static final Overview OVERVIEW =
      Invented.overview(
          4,
          List.of(new Overview.Entry.Turned(Invented.NOON, new Turn(-0.125), null, false)),
          -0.125);

  @Test
  void theFootSaysThatItIsNotSure() {
    assertThat(Trail.row(OVERVIEW, 76)).isEqualTo("Relief about 1/8 loosen (not sure)");
    assertThat(Trail.rod(OVERVIEW))
        .isEqualTo("Rod about 1/8 looser than found (not sure), moved 1/8 in 24 h");
  }

  @Test
  void theLogSaysNothingOfAFeelThatIsNotKnown() {
    String line = Trail.lines(OVERVIEW, ZoneOffset.UTC, 76).get(0).toString();
    assertThat(line).contains("about 1/8 loosen (not sure)");
    assertThat(line).doesNotContain("smooth");
  }
}
