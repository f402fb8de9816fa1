package quarterturn.craft.rod;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** What is decided on a belief. */
class BeliefAdvisorTest {
  private static final Window WINDOW = new Window(0.30, 0.45);
  private static final Known BASS = Known.of(Prior.BASS);
  private static final Allowed ALLOWED = new Allowed(Turn.QUARTER, new Turn(1));
  private final BeliefAdvisor advisor = new BeliefAdvisor();

  private static Seen read(double low, double high) {
    return new Seen.Read(new Bracket(low, high));
  }

  private static Seen turned(double turns) {
    return new Seen.Turned(new Turn(turns));
  }

  private Decision decide(Seen... story) {
    return advisor.decide(WINDOW, BASS, List.of(story), ALLOWED);
  }

  private double turn(Window window, Seen... story) {
    Decision decision = advisor.decide(window, BASS, List.of(story), ALLOWED);
    return ((Decision.TurnRod) decision.step()).turn().turns();
  }

  @Test
  void problemsThatMirrorEachOtherGetMirroredAdvice() {
    Window window = new Window(0.425, 0.575);
    for (double off : new double[] {0.10, 0.15, 0.20, 0.30, 0.40}) {
      double high = turn(window, read(0.475 + off, 0.525 + off));
      double low = turn(window, read(0.475 - off, 0.525 - off));
      assertWithMessage("off by " + off).that(high).isGreaterThan(0);
      assertWithMessage("off by " + off).that(low).isEqualTo(-high);
      double next =
          turn(
              window,
              read(0.475 + off + 0.1, 0.525 + off + 0.1),
              turned(0.125),
              read(0.475 + off, 0.525 + off));
      double mirrored =
          turn(
              window,
              read(0.475 - off - 0.1, 0.525 - off - 0.1),
              turned(-0.125),
              read(0.475 - off, 0.525 - off));
      assertWithMessage("off by " + off).that(mirrored).isEqualTo(-next);
    }
  }

  @Test
  void aReadingInTheWindowIsLeftAlone() {
    Decision decision = decide(read(0.35, 0.40));
    assertThat(decision.step()).isInstanceOf(Decision.Leave.class);
    assertThat(decision.inWindow()).isGreaterThan(0.95);
    assertThat(decision.why()).contains("0.35 to 0.40 mm");
  }

  @Test
  void aReadingOnTheEdgeIsTakenAgainOnce() {
    assertThat(decide(read(0.40, 0.50)).step()).isInstanceOf(Decision.ReadAgain.class);
    assertThat(decide(read(0.40, 0.50), read(0.40, 0.50)).step())
        .isNotInstanceOf(Decision.ReadAgain.class);
  }

  @Test
  void withoutAReadingSinceTheTurnOneIsAskedFor() {
    assertThat(decide().step()).isInstanceOf(Decision.ReadAgain.class);
    assertThat(decide(read(0.60, 0.65), turned(0.125)).step())
        .isInstanceOf(Decision.ReadAgain.class);
  }

  @Test
  void aNeckThatMovesFastIsTurnedLess() {
    double slow = turn(WINDOW, read(0.85, 0.90), turned(0.125), read(0.80, 0.85));
    double fast = turn(WINDOW, read(0.85, 0.90), turned(0.125), read(0.60, 0.65));
    assertThat(slow).isEqualTo(0.25);
    assertThat(fast).isLessThan(slow);
  }

  @Test
  void aRodThatDoesNothingIsHandedOver() {
    Decision decision =
        decide(
            read(0.60, 0.65),
            turned(0.125),
            read(0.60, 0.65),
            turned(0.25),
            read(0.60, 0.65),
            turned(0.25),
            read(0.60, 0.65));
    assertThat(decision.step()).isEqualTo(new Decision.HandOver(Decision.Reason.NO_RESPONSE));
    assertThat(decision.why()).contains("does not answer");
  }

  @Test
  void aRodThatWorksTheOtherWayIsHandedOver() {
    Decision decision =
        decide(read(0.60, 0.65), turned(0.125), read(0.75, 0.80), turned(0.25), read(0.95, 1.00));
    assertThat(decision.step()).isEqualTo(new Decision.HandOver(Decision.Reason.WRONG_WAY));
  }

  @Test
  void aFullTurnFromAsFoundIsTheLimit() {
    Seen[] story = {read(1.30, 1.35), turned(0.25), read(1.10, 1.15)};
    Decision none =
        advisor.decide(WINDOW, BASS, List.of(story), new Allowed(Turn.QUARTER, new Turn(0.25)));
    assertThat(none.step()).isEqualTo(new Decision.HandOver(Decision.Reason.LIMIT));
    Decision some =
        advisor.decide(WINDOW, BASS, List.of(story), new Allowed(Turn.QUARTER, new Turn(0.375)));
    assertThat(((Decision.TurnRod) some.step()).turn().turns()).isEqualTo(0.125);
    assertThat(turn(WINDOW, story)).isEqualTo(0.25);
  }

  @Test
  void theWayBackToAsFoundIsAlwaysAllowed() {
    assertThat(ALLOWED.most(0.875, 1)).isEqualTo(Turn.EIGHTH);
    assertThat(ALLOWED.most(-0.875, -1)).isEqualTo(Turn.EIGHTH);
    assertThat(ALLOWED.most(0.875, -1)).isEqualTo(Turn.QUARTER);
    assertThat(ALLOWED.most(1.5, -1)).isEqualTo(Turn.QUARTER);
    assertThat(ALLOWED.most(-1.5, 1)).isEqualTo(Turn.QUARTER);
    assertThat(ALLOWED.most(1, 1)).isEqualTo(Turn.NONE);
  }

  @Test
  void anEngineIsAdvisedTowardTheWindowOnly() {
    Advisor.Question question = asked(read(0.60, 0.65), turned(0.125), read(0.75, 0.80));
    assertThat(advisor.advise(question).turn().turns()).isGreaterThan(0);
    assertThat(advisor.advise(asked(read(0.35, 0.40))).turn()).isEqualTo(Turn.NONE);
    Advisor.Question sound = asked(read(0.60, 0.65), turned(0.125), read(0.50, 0.55));
    Range expected = advisor.expect(sound, Turn.EIGHTH);
    assertThat(expected.lowMm()).isAtLeast(0.30);
    assertThat(expected.highMm()).isAtMost(0.52);
  }

  private static Advisor.Question asked(Seen... story) {
    Bracket reading = ((Seen.Read) story[story.length - 1]).relief();
    return new Advisor.Question(
        WINDOW, reading, Known.of(Prior.BASS), List.of(story), Turn.QUARTER);
  }

  @Test
  void aRodIsDoubtedOnlyOnWhatItWasSeenToDo() {
    assertThat(advisor.fault(asked(read(0.60, 0.65)))).isNull();
    assertThat(advisor.fault(asked(read(0.60, 0.65), turned(0.125), read(0.50, 0.55)))).isNull();
    Seen same = read(0.60, 0.65);
    assertThat(advisor.fault(asked(same, turned(0.125), same, turned(0.25), same)))
        .isEqualTo(Decision.Reason.NO_RESPONSE);
    assertThat(advisor.fault(asked(same, turned(0.125), read(0.75, 0.80))))
        .isEqualTo(Decision.Reason.WRONG_WAY);
  }

  @Test
  void aTechnicianIsToldTheNumbers() {
    Advice advice = advisor.advise(asked(read(0.60, 0.65), turned(0.125), read(0.50, 0.55)));
    assertThat(advice.numbers())
        .matches(
            "A quarter turn: 0\\.\\d\\d mm \\(0\\.\\d\\d to 0\\.\\d\\d\\)\\. In range after 1/8"
                + " turn: \\d+ %\\.");
  }

  @Test
  void ofANeckThatDidNotAnswerNoResponseIsClaimed() {
    Decision decision = decide(read(0.60, 0.65), turned(0.125), read(0.60, 0.65));
    assertThat(decision.step()).isInstanceOf(Decision.TurnRod.class);
    assertThat(decision.why()).contains("not seen to answer");
    assertThat(decision.why()).doesNotContain("Going by its turns");
    assertThat(decide(read(0.60, 0.65), turned(0.125), read(0.50, 0.55)).why())
        .contains("Going by its turns so far");
    assertThat(decide(read(0.60, 0.65)).why()).contains("not known yet");
  }
}
