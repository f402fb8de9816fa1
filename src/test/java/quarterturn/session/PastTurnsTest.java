package quarterturn.session;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Which;
import quarterturn.session.store.Samples;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

class PastTurnsTest {
  private static final Bracket A = new Bracket(0.50, 0.55);
  private static final Bracket B = new Bracket(0.40, 0.45);
  private static final Bracket C = new Bracket(0.30, 0.35);

  private static Event read(int minute, Bracket bracket) {
    return Samples.relief(minute, Which.LOWEST, bracket.lowMm(), bracket.highMm());
  }

  private static Event.Past past(int minute, Turn turn, Bracket before, Bracket after) {
    return new Event.Past(Samples.at(minute), turn, before, after);
  }

  private static List<Event.Past> of(Event... events) {
    return PastTurns.of(List.of(events));
  }

  @Test
  void eachTurnHasTheReadingsAroundIt() {
    assertThat(
            of(
                read(0, A),
                Samples.turned(1, Turn.EIGHTH),
                read(2, B),
                Samples.turned(3, Turn.QUARTER.opposite()),
                read(4, C)))
        .containsExactly(past(1, Turn.EIGHTH, A, B), past(3, Turn.QUARTER.opposite(), B, C))
        .inOrder();
  }

  @Test
  void theLastOfSeveralReadingsCounts() {
    assertThat(of(read(0, B), read(1, A), Samples.turned(2, Turn.EIGHTH), read(3, C), read(4, B)))
        .containsExactly(past(2, Turn.EIGHTH, A, B));
  }

  @Test
  void theHighestStringAndTheRoomDoNotCount() {
    Event highest = Samples.relief(3, Which.HIGHEST, 0.1, 0.15);
    Event room = Samples.everyKind().get(9);
    Event later = Samples.relief(9, Which.HIGHEST, 0.1, 0.15);
    assertThat(of(read(0, A), highest, room, Samples.turned(8, Turn.EIGHTH), later))
        .isEqualTo(List.of(new Event.Past(Samples.at(8), Turn.EIGHTH, A, null)));
  }

  @Test
  void aReadingIsNotUsedForTwoTurns() {
    List<Event.Past> turns =
        of(read(0, A), Samples.turned(1, Turn.EIGHTH), Samples.turned(2, Turn.SIXTEENTH));
    assertThat(turns.get(0)).isEqualTo(new Event.Past(Samples.at(1), Turn.EIGHTH, A, null));
    assertThat(turns.get(1)).isEqualTo(new Event.Past(Samples.at(2), Turn.SIXTEENTH, null, null));
  }

  @Test
  void whereItCouldNotBeMeasuredNothingIsSaid() {
    assertThat(
            of(
                read(0, A),
                Samples.unmeasured(1),
                Samples.turned(2, Turn.EIGHTH),
                Samples.unmeasured(3)))
        .isEqualTo(List.of(new Event.Past(Samples.at(2), Turn.EIGHTH, null, null)));
  }

  @Test
  void aReadingFromAfterABreakDoesNotReplaceOneFromBefore() {
    Event left = new Event.Left(Samples.at(4), "strings at pitch");
    Event resumed = new Event.Resumed(Samples.at(900), List.of(), null);
    assertThat(
            of(read(0, A), Samples.turned(1, Turn.EIGHTH), read(2, B), left, resumed, read(901, C)))
        .containsExactly(past(1, Turn.EIGHTH, A, B));
    assertThat(of(read(0, A), Samples.turned(1, Turn.EIGHTH), left, resumed, read(901, C)))
        .containsExactly(past(1, Turn.EIGHTH, A, C));
  }

  @Test
  void aRecalledTurnCountsAndAnUnsureOneTeachesNothing() {
    Event sure = new Event.Recalled(Samples.at(1), "turn", Turn.EIGHTH, true, null);
    Event unsure = new Event.Recalled(Samples.at(1), "turn", Turn.EIGHTH, false, null);
    assertThat(of(read(0, A), sure, read(2, B))).containsExactly(past(1, Turn.EIGHTH, A, B));
    assertThat(of(read(0, A), unsure, read(2, B)))
        .containsExactly(new Event.Past(Samples.at(1), Turn.EIGHTH, null, null));
  }

  @Test
  void aNutThatDidNotMoveIsNoTurn() {
    Event jammed = new Event.Turned(Samples.at(3), "turn", Turn.NONE, Feel.JAMMED);
    assertThat(of(read(0, A), jammed, Samples.turned(4, Turn.SIXTEENTH), read(5, B)))
        .containsExactly(past(4, Turn.SIXTEENTH, A, B));
  }

  @Test
  void aWithdrawnReadingOrTurnIsAsIfItHadNotBeen() {
    Event correct = new Event.Corrected(Samples.at(9), "any");
    assertThat(of(read(0, B), correct, read(1, A), Samples.turned(2, Turn.EIGHTH)))
        .containsExactly(new Event.Past(Samples.at(2), Turn.EIGHTH, A, null));
    assertThat(
            of(
                read(0, A),
                Samples.turned(1, Turn.QUARTER),
                correct,
                Samples.turned(2, Turn.EIGHTH),
                read(3, B)))
        .containsExactly(past(2, Turn.EIGHTH, A, B));
  }

  @Test
  void eachCorrectionGoesOneAnswerFurtherBack() {
    Event correct = new Event.Corrected(Samples.at(9), "any");
    assertThat(
            of(
                read(0, A),
                Samples.turned(1, Turn.QUARTER),
                new Event.Told(Samples.at(2), "tune"),
                correct,
                new Event.Accepted(Samples.at(3), "tune", "snap", List.of()),
                correct,
                Samples.turned(4, Turn.EIGHTH)))
        .containsExactly(new Event.Past(Samples.at(4), Turn.EIGHTH, A, null));
  }
}
