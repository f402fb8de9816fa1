package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;

/** An answer that ends the session before its time is asked about once. Readings are invented. */
class EndsHereTest {
  private static Play damaged(Role role) throws Exception {
    return Play.of(Play.relief(), role, "bass-34", Style.MEDIUM).to("inspect").choose("damage");
  }

  @Test
  void itSaysWhatTheEndSaysAndWhatIsLeftUndone() throws Exception {
    for (Role role : Role.values()) {
      Play play = damaged(role);
      assertThat(play.step()).isEqualTo(EngineQuestions.ENDS);
      assertThat(play.prompt().ended()).isFalse();
      String text = play.prompt().said().text();
      assertThat(text).startsWith("With this answer the session ends. ");
      assertThat(text).contains("Left undone: Measure as found, Decide, Find the rod, Turn");
      String end = play.choose("end").prompt().said().text();
      assertThat(play.prompt().ended()).isTrue();
      assertThat(text).contains(end);
    }
  }

  @Test
  void aSlipOfThePenIsTakenBackAndAskedForAgain() throws Exception {
    Play play = damaged(Role.BEGINNER).choose(EngineQuestions.TAKE_BACK);
    assertThat(play.step()).isEqualTo("inspect");
    assertThat(play.state().position().chosen("inspect")).isNull();
    play.choose("sound").found("0.60..0.65");
    assertThat(play.step()).isEqualTo("changed");
    assertThat(play.events.stream().filter(Event.Corrected.class::isInstance).count()).isEqualTo(1);
  }

  @Test
  void oneWhoGivesTheSameAnswerAgainIsAskedAgain() throws Exception {
    Play play = damaged(Role.BEGINNER).choose(EngineQuestions.TAKE_BACK).choose("damage");
    assertThat(play.step()).isEqualTo(EngineQuestions.ENDS);
    assertThat(play.choose("end").prompt().ended()).isTrue();
  }

  /** Nothing from before a break is taken back. */
  @Test
  void afterABreakTheAnswerStands() throws Exception {
    Play play = damaged(Role.BEGINNER).resumeAfter(Duration.ofHours(3)).ok();
    // What the end tells to do has a hazard, which is shown anew.
    assertThat(play.prompt()).isInstanceOf(Prompt.Caution.class);
    assertThat(play.ok().prompt().ended()).isTrue();
    assertThat(play.state().position().chosen("inspect")).isEqualTo("damage");
  }

  /** A slip of the pen is not to hold until a repairer has looked. */
  @Test
  void anEndThatNeedsARepairersFindingIsAskedAboutToo() throws Exception {
    Play play = Play.beginner("bass-34").found("0.60..0.65").to("key-fit").choose("rounded");
    assertThat(play.step()).isEqualTo(EngineQuestions.ENDS);
    play.choose("end");
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo("stripped");
  }

  @Test
  void aReadingThatCannotBeHadIsAskedAboutToo() throws Exception {
    Play play = Play.of(Play.library("relief-check"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    play.to("low").give(new Answer.CannotMeasure());
    assertThat(play.step()).isEqualTo(EngineQuestions.ENDS);
    assertThat(play.choose(EngineQuestions.TAKE_BACK).step()).isEqualTo("low");
    play.read("0.35..0.40").read("0.35..0.40");
    assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("in-window");
  }

  @Test
  void anEndAtItsTimeIsNotAskedAbout() throws Exception {
    Play play = new BenchNeck(0.37, 0.2).playOut(Play.beginner("bass-34"));
    assertThat(play.prompt().ended()).isTrue();
    assertThat(play.state().position().chosen()).doesNotContainKey(EngineQuestions.ENDS);
  }
}
