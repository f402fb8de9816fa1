package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/**
 * A reading does not hold for ever, also where the program is never left. Readings are invented.
 */
class FreshReadingTest {
  private static Play found() throws Exception {
    return Play.beginner("bass-34")
        .to("found-low")
        .read("1.20..1.25")
        .read("1.20..1.25")
        .read("1.20..1.25");
  }

  private static void later(Play play, Duration gone) throws Exception {
    play.bench.setClock(play.bench.now().plus(gone));
  }

  @Test
  void threeDaysAfterAReadingItIsTakenAnewBeforeATurn() throws Exception {
    Play play = found().to("seat");
    later(play, Duration.ofDays(3));
    play.ok();
    assertThat(play.step()).isEqualTo("tune-again");
    play.to("confirm").read("1.20..1.25").to("turn-rod");
    assertThat(((Prompt.TurnRod) play.prompt()).turn()).isEqualTo(Turn.EIGHTH);
  }

  @Test
  void anHourIsNotTooLong() throws Exception {
    Play play = found().to("seat");
    later(play, Duration.ofMinutes(60));
    play.ok();
    assertThat(play.step()).isEqualTo("turn-rod");
  }

  @Test
  void aReadingGrowsOldWhileTheHazardsOfATurnAreRead() throws Exception {
    Play play = found().to("seat").ok();
    assertThat(play.prompt()).isInstanceOf(Prompt.Caution.class);
    later(play, Duration.ofDays(1));
    play.ok();
    assertThat(play.step()).isEqualTo("tune-again");
  }

  @Test
  void aCorrectionMakesNoReadingYounger() throws Exception {
    Play play = found().to("seat");
    later(play, Duration.ofDays(1));
    play.ok().give(new Answer.Correct());
    assertThat(play.step()).isEqualTo("seat");
    play.ok();
    assertThat(play.step()).isEqualTo("tune-again");
  }

  @Test
  void stringsTunedYesterdayAreNotAtPitchForAReading() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    later(play, Duration.ofDays(1));
    play.read("1.20..1.25").read("1.20..1.25").read("1.20..1.25").to("seat").ok();
    assertThat(play.step()).isEqualTo("tune-again");
  }

  @Test
  void aSlowHandIsNoFaultOfTheProcedure() throws Exception {
    Play play = found().to("seat");
    for (int i = 0; i < 6; i++) {
      later(play, Duration.ofHours(5));
      play.ok().to("confirm").read("1.20..1.25").to("seat");
    }
    play.to("turn-rod");
    assertThat(play.prompt()).isInstanceOf(Prompt.TurnRod.class);
  }

  /** Tuning has grown old before each reading, so that none of them counts. */
  @Test
  void norIsALongPauseBeforeEachReading() throws Exception {
    Play play = found().to("seat");
    later(play, Duration.ofHours(5));
    play.ok();
    for (int i = 0; i < 6; i++) {
      play.to("confirm");
      later(play, Duration.ofHours(5));
      play.read("1.20..1.25").to("seat").ok();
      assertThat(play.step()).isEqualTo("tune-again");
    }
    play.to("confirm").read("1.20..1.25").to("turn-rod");
    assertThat(play.prompt()).isInstanceOf(Prompt.TurnRod.class);
  }
}
