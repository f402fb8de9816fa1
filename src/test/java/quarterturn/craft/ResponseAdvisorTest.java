package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** The first advisor: the window's middle, the bracket, and a response that is learned. */
class ResponseAdvisorTest {
  private static final Window WINDOW = new Window(0.30, 0.45);
  private final Advisor advisor = new ResponseAdvisor();

  private static Advisor.Question ask(Bracket reading, List<Move> moves, Turn most) {
    return new Advisor.Question(WINDOW, reading, moves, Prior.BASS, most);
  }

  @Test
  void tooMuchReliefIsTightenedAndTooLittleLoosened() {
    Turn down = advisor.advise(ask(new Bracket(0.60, 0.65), List.of(), Turn.QUARTER)).turn();
    Turn up = advisor.advise(ask(new Bracket(0.05, 0.10), List.of(), Turn.QUARTER)).turn();
    Turn touching = advisor.advise(ask(Bracket.touches(), List.of(), Turn.QUARTER)).turn();
    assertThat(down.turns()).isGreaterThan(0.0);
    assertThat(up.turns()).isLessThan(0.0);
    assertThat(touching.turns()).isLessThan(0.0);
  }

  @Test
  void aReadingInTheWindowAsksForNoTurn() {
    assertThat(advisor.advise(ask(new Bracket(0.30, 0.35), List.of(), Turn.QUARTER)).turn())
        .isEqualTo(Turn.NONE);
  }

  @Test
  void turnsComeInSixteenthsAndNeverAboveWhatIsAllowed() {
    Random random = new Random(11);
    for (int i = 0; i < 5000; i++) {
      double low = random.nextDouble() * 2;
      Turn most = new Turn(1 / 16.0 + random.nextDouble() / 5);
      Turn turn = advisor.advise(ask(new Bracket(low, low + 0.05), List.of(), most)).turn();
      assertThat(turn.turns() * 16).isWithin(1e-9).of(Math.rint(turn.turns() * 16));
      assertThat(turn.size().turns()).isAtMost(most.turns() + 1e-9);
    }
  }

  /** Response prior: an estimate from beam theory, no published response was found. */
  @Test
  void theNeedIsTheErrorOverTheResponse() {
    // 0.16 mm too much at 0.22 mm a quarter turn asks for 0.18 turn, so 2/16.
    Turn turn = advisor.advise(ask(new Bracket(0.51, 0.56), List.of(), Turn.QUARTER)).turn();
    assertThat(turn).isEqualTo(Turn.EIGHTH);
  }

  @Test
  void theResponseIsLearnedFromThisNecksOwnTurns() {
    Move quick = new Move(Turn.EIGHTH, new Bracket(0.90, 0.95), new Bracket(0.70, 0.75));
    Move slow = new Move(Turn.EIGHTH, new Bracket(0.90, 0.95), new Bracket(0.85, 0.90));
    double before = RodResponse.of(Prior.BASS, List.of()).mmPerQuarter();
    assertThat(RodResponse.of(Prior.BASS, List.of(quick)).mmPerQuarter()).isGreaterThan(before);
    assertThat(RodResponse.of(Prior.BASS, List.of(slow)).mmPerQuarter()).isLessThan(before);
    assertThat(RodResponse.of(Prior.BASS, List.of(quick)).sigma()).isLessThan(Prior.SIGMA);
  }

  @Test
  void aNeckReadExactlyIsLearnedExactly() {
    double gap = 2.0;
    double response = 0.31;
    java.util.ArrayList<Move> moves = new java.util.ArrayList<>();
    for (int i = 0; i < 60; i++) {
      double next = gap - response;
      moves.add(new Move(Turn.QUARTER, new Bracket(gap, gap), new Bracket(next, next)));
      gap = next;
    }
    assertThat(RodResponse.of(Prior.BASS, moves).mmPerQuarter()).isWithin(0.01).of(response);
  }

  @Test
  void theExpectedRangeHoldsTheMiddleAndWidensWithIgnorance() {
    Move told = new Move(Turn.EIGHTH, new Bracket(0.70, 0.75), new Bracket(0.60, 0.65));
    Bracket now = new Bracket(0.60, 0.65);
    Range first = advisor.expect(ask(now, List.of(), Turn.QUARTER), Turn.EIGHTH);
    Range later = advisor.expect(ask(now, List.of(told), Turn.QUARTER), Turn.EIGHTH);
    assertThat(first.lowMm()).isLessThan(0.625 - 0.11);
    assertThat(first.highMm()).isGreaterThan(0.625 - 0.11);
    assertThat(later.highMm() - later.lowMm()).isLessThan(first.highMm() - first.lowMm());
  }

  @Test
  void underATouchingStringTheRangeIsOpenBelow() {
    Range range = advisor.expect(ask(Bracket.touches(), List.of(), Turn.QUARTER), new Turn(-0.125));
    assertThat(range.lowMm()).isNegativeInfinity();
    assertThat(range.highMm()).isGreaterThan(0.1);
  }

  @Test
  void theReasonNamesTheWayAndWhatItRestsOn() {
    Advice advice = advisor.advise(ask(new Bracket(0.60, 0.65), List.of(), Turn.QUARTER));
    assertThat(advice.why()).contains("tightening makes it smaller");
    assertThat(advice.why()).contains("0.22 mm");
  }
}
