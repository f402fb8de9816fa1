package quarterturn.craft.rod;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** What holds of every turn that is advised, on necks of every sort. */
class TurnsAdvisedTest {
  private static final Window WINDOW = new Window(0.25, 0.40);
  private static final Known BASS = Known.of(Prior.BASS);
  private static final Turn WHOLE = new Turn(1);
  private static final int MOST_MOVES = 14;
  private final BeliefAdvisor advisor = new BeliefAdvisor();

  /** Follows the advice until it gives no more turns; tells each with the story before it. */
  private int follow(
      Supplier<Bracket> read, BiConsumer<Decision.TurnRod, Decision> made, List<Seen> story) {
    int moves = 0;
    while (moves < MOST_MOVES) {
      story.add(new Seen.Read(read.get()));
      Allowed allowed = new Allowed(moves == 0 ? Turn.EIGHTH : Turn.QUARTER, WHOLE);
      Decision decision = advisor.decide(WINDOW, BASS, story, allowed);
      if (decision.step() instanceof Decision.TurnRod turn) {
        made.accept(turn, decision);
        story.add(new Seen.Turned(turn.turn()));
        moves++;
      } else if (!(decision.step() instanceof Decision.ReadAgain)) {
        return moves;
      }
    }
    return moves;
  }

  private interface Each {
    void see(Decision.TurnRod turn, Decision decision, Bracket reading, String where);
  }

  private void everyTurn(Each each) {
    for (RodState state : List.of(RodState.WORKS, RodState.REVERSED, RodState.DEAD)) {
      for (int seed = 1; seed <= 60; seed++) {
        SplittableRandom random = new SplittableRandom(seed);
        double relief = -0.25 + 1.25 * random.nextDouble();
        double response = 0.3 * Math.exp(0.5 * random.nextGaussian());
        SimulatedRod neck = new SimulatedRod(state, relief, response, 0.04, 0.012, random.split());
        List<Seen> story = new ArrayList<>();
        String where = state + ", seed " + seed;
        follow(
            neck::read,
            (turn, decision) -> {
              Bracket reading = ((Seen.Read) story.get(story.size() - 1)).relief();
              each.see(turn, decision, reading, where);
              neck.turn(turn.turn().turns());
            },
            story);
      }
    }
  }

  @Test
  void aTurnIsAnEighthOrAQuarterAndASixteenthOnlyOfALivelyNeck() {
    everyTurn(
        (turn, decision, reading, where) -> {
          Turn size = turn.turn().size();
          Known known = decision.known();
          boolean lively = known.answered() && known.mmPerQuarter() >= 0.20;
          assertWithMessage(where + ": " + size)
              .that(lively ? List.of(0.0625, 0.125, 0.25) : List.of(0.125, 0.25))
              .contains(size.turns());
        });
  }

  @Test
  void theSentenceAndTheTurnAgreeWithTheReading() {
    everyTurn(
        (turn, decision, reading, where) -> {
          boolean tighten = reading.middleMm() > WINDOW.middleMm();
          assertWithMessage(where).that(turn.turn().turns() > 0).isEqualTo(tighten);
          assertWithMessage(where)
              .that(decision.why())
              .contains(
                  reading.noGap()
                      ? "No gap shows"
                      : tighten ? "larger than it should be" : "smaller than it should be");
        });
  }

  @Test
  void aNeckThatTouchesAfterAGapUnderALeafAndStaysSoIsHandedOverInFiveMoves() {
    Bracket gap = new Bracket(0, 0.05);
    for (Bracket none : List.of(Bracket.lifts(0.05), Bracket.touches())) {
      int[] left = {1};
      int moves =
          follow(
              () -> left[0]-- > 0 ? gap : none,
              (turn, decision) -> assertThat(turn.turn().turns()).isLessThan(0.0),
              new ArrayList<>());
      assertThat(moves).isAtMost(5);
    }
  }

  @Test
  void aNeckThatTheLeastTurnTakesAcrossItsWindowIsHandedOver() {
    SplittableRandom random = new SplittableRandom(1);
    SimulatedRod neck = new SimulatedRod(RodState.WORKS, 0.45, 1.2, 0, 0.012, random);
    List<Seen> story = new ArrayList<>();
    int moves = follow(neck::read, (turn, decision) -> neck.turn(turn.turn().turns()), story);
    assertThat(moves).isAtMost(4);
    Decision end = advisor.decide(WINDOW, BASS, story, new Allowed(Turn.QUARTER, WHOLE));
    assertThat(end.step()).isEqualTo(new Decision.HandOver(Decision.Reason.TOO_LIVELY));
  }
}
