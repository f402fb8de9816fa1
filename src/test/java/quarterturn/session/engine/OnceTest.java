package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;

/** Steps that are passed over where all that they give still holds. Readings are invented. */
class OnceTest {
  private static Play alongTheNeck() throws Exception {
    Play play = Play.of(Play.library("buzz"), Role.BEGINNER, "bass-34", Style.MEDIUM);
    play.to("where").choose("low").to("relief").read("0.30 passes 0.35 lifts");
    return play.read("0.30 passes 0.35 lifts");
  }

  private static Play evenBow(Play play) {
    return play.read("0.05 passes 0.10 lifts")
        .read("0.05 passes 0.10 lifts")
        .read("0.05 passes 0.10 lifts")
        .read("0.05 lifts");
  }

  @Test
  void stringsThatStandAtPitchAreNotTunedAgain() throws Exception {
    Play play = evenBow(alongTheNeck());
    assertThat(play.step()).isEqualTo("low-strings");
    assertThat(play.events.stream().filter(Event.Passed.class::isInstance).map(Event::toString))
        .containsExactly("Passed[at=" + play.bench.now() + ", step=tune-again, why=still so]");
  }

  @Test
  void afterABreakInWhichTheyMayHaveDriftedTheyAre() throws Exception {
    Play play = alongTheNeck();
    play.resumeAfter(Duration.ofHours(5)).ok();
    assertThat(play.to("tune").prompt().said().text()).contains("tune every string to its pitch");
    play.to("relief");
  }

  /** Nobody closed the program: the strings have drifted all the same. */
  @Test
  void stringsThatWereTunedHoursAgoAreTunedAgain() throws Exception {
    Play play = alongTheNeck();
    play.bench.setClock(play.bench.now().plus(Duration.ofHours(5)));
    evenBow(play);
    assertThat(play.step()).isEqualTo("tune-again");
  }
}
