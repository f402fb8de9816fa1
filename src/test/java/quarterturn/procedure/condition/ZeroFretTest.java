package quarterturn.procedure.condition;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Bracket;

/** Over a zero fret touching is right; a bow that touches may be bent back: common practice. */
class ZeroFretTest {
  private static final Window FROM_NONE = new Window(0, 0.05);
  private static final Window SLOTTED = new Window(0.1, 0.2);

  private static Verdict nut(Bracket reading, Window window) {
    return Verdict.of(Quantity.NUT_CLEARANCE, reading, window);
  }

  @Test
  void touchingIsInAWindowThatBeginsAtNoGap() {
    assertThat(nut(Bracket.touches(), FROM_NONE)).isEqualTo(Verdict.IN);
    assertThat(nut(Bracket.lifts(0.05), FROM_NONE)).isEqualTo(Verdict.IN);
    assertThat(nut(Bracket.lifts(0.1), FROM_NONE)).isEqualTo(Verdict.UNDECIDED);
    assertThat(nut(new Bracket(0.05, 0.1), FROM_NONE)).isEqualTo(Verdict.ABOVE);
  }

  @Test
  void touchingIsNotInAnyOther() {
    assertThat(nut(Bracket.touches(), SLOTTED)).isEqualTo(Verdict.TOUCHES);
    assertThat(Verdict.of(Quantity.RELIEF, Bracket.touches(), new Window(0, 0.25)))
        .isEqualTo(Verdict.TOUCHES);
  }
}
