package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import quarterturn.craft.rod.Seen;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/** Leaving and coming back, in order or not. Readings are invented. */
class CrashTest {
  private static Play atTheTurn() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    return play.read("0.60..0.65").read("0.60..0.65").read("0.60..0.65").to("turn-rod");
  }

  @Test
  void aCrashInsideATurnAsksWhetherItWasMade() throws Exception {
    Play play = atTheTurn().resumeAfter(Duration.ofMinutes(3));
    assertThat(play.prompt().said().text()).contains("in the middle of a rod turn");
    play.ok();
    assertThat(play.step()).isEqualTo(EngineQuestions.RECALL);
    play.choose(Recall.MADE.word());
    assertThat(play.state().history().net()).isEqualTo(Turn.EIGHTH);
    play.to("read-low");
  }

  @Test
  void aTurnThatWasNotMadeNeedsAFreshReadingFirst() throws Exception {
    Play play = atTheTurn().resumeAfter(Duration.ofMinutes(3)).ok().choose(Recall.NOT_MADE.word());
    assertThat(play.state().history().turns()).isEmpty();
    play.to("confirm").read("0.60..0.65").to("turn-rod");
  }

  @Test
  void aTurnNobodyIsSureOfCountsAndTeachesNothing() throws Exception {
    Play play = atTheTurn().resumeAfter(Duration.ofMinutes(3)).ok().choose(Recall.UNSURE.word());
    assertThat(play.state().history().net()).isEqualTo(Turn.EIGHTH);
    play.to("read-low").read("0.60..0.65");
    assertThat(
            Story.of(play.state(), ShippedRules.LIMITS).stream()
                .noneMatch(Seen.Turned.class::isInstance))
        .isTrue();
  }

  @Test
  void aStopSignBeforeTheBreakCountsAfterIt() throws Exception {
    for (Recall recall : new Recall[] {Recall.JAMMED, Recall.NOISE, Recall.SLIPPED}) {
      Play play = atTheTurn().resumeAfter(Duration.ofMinutes(3)).ok().choose(recall.word());
      while (play.prompt() instanceof Prompt.Caution) {
        play.ok();
      }
      assertThat(play.prompt()).isInstanceOf(Prompt.HandOver.class);
    }
  }

  @Test
  void comingBackShowsTheLastThreeActionsTheTimeAndWhatWentStale() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("0.60..0.65").read("0.60..0.65").read("0.60..0.65");
    assertThat(play.step()).isEqualTo("changed");
    play.bench.leave();
    play.resumeAfter(Duration.ofMinutes(20));
    String text = play.prompt().said().text();
    assertThat(text).contains("20 min");
    assertThat(text).contains("stale");
    assertThat(text.lines().filter(line -> line.startsWith("- "))).hasSize(3);
    // At pitch still, and only minutes ago: one reading again, nothing else.
    play.ok();
    assertThat(play.step()).isEqualTo("confirm");
  }

  @Test
  void stringsThatMayBeDownAlreadyAreTunedBeforeTheReading() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("0.60..0.65").read("0.60..0.65").read("0.60..0.65").to("detune");
    // Done, perhaps, and not yet said.
    play.resumeAfter(Duration.ofMinutes(3)).ok();
    assertThat(play.step()).isEqualTo("tune-again");
    play.to("confirm");
  }

  @Test
  void afterDaysTheStringsAreTunedBeforeTheReading() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("0.60..0.65").read("0.60..0.65").read("0.60..0.65");
    play.resumeAfter(Duration.ofDays(8)).ok();
    assertThat(play.step()).isEqualTo("tune-again");
    play.to("confirm");
  }

  @Test
  void leavingSaysInWhatStateTheInstrumentIs() throws Exception {
    Play play = atTheTurn();
    play.turned(Feel.SMOOTH);
    assertThat(play.bench.leave()).isEqualTo("rod turned, strings not yet back at pitch");
    Event last = play.events.get(play.events.size() - 1);
    assertThat(((Event.Left) last).standing()).contains("not yet back at pitch");
  }

  @Test
  void aSettleThatWasInterruptedGoesOn() throws Exception {
    Play play = atTheTurn();
    play.turned(Feel.SMOOTH).to("settle").resumeAfter(Duration.ofMinutes(4)).ok();
    assertThat(play.step()).isEqualTo("settle");
    play.waited();
    assertThat(play.step()).isEqualTo("read-low");
  }

  @Test
  void aNeckLeftLooseIsSeatedBeforeItIsTuned() throws Exception {
    Play play = Play.technician("bass-34").found("0.60..0.65").to("rod-place").choose("pocket");
    play.to("pocket-seat");
    play.resumeAfter(Duration.ofMinutes(5));
    assertThat(play.prompt().said().text()).contains("neck loose in its pocket");
    play.ok();
    assertThat(play.step()).isEqualTo("pocket-refit");
    play.to("retune").to("read-low");
  }

  @Test
  void whereverItStopsNothingIsLostAndNothingIsAskedTwiceButTheReading() throws Exception {
    Play whole = new BenchNeck(0.72, 0.2).playOut(Play.beginner("bass-30"));
    for (int cut = 1; cut < whole.events.size(); cut++) {
      Play play = Play.beginner("bass-30");
      play.events.clear();
      play.events.addAll(whole.events.subList(0, cut));
      State before = play.state();
      if (before.pending().ended() != null) {
        continue;
      }
      play.resumeAfter(Duration.ofMinutes(2)).ok();
      State after = play.state();
      assertThat(after.history().turns()).hasSize(before.history().turns().size());
      assertThat(after.history().readings()).hasSize(before.history().readings().size());
      assertThat(after.position().chosen()).isEqualTo(before.position().chosen());
      // Glasses were taken off: what protects is accepted anew.
      assertThat(after.accepted()).isEmpty();
      long asked = play.events.stream().filter(Event.Chose.class::isInstance).count();
      BenchNeck neck = new BenchNeck(0.72 - after.history().net().turns() * 4 * 0.2, 0.2);
      if (play.step().equals(EngineQuestions.RECALL)) {
        play.choose(Recall.NOT_MADE.word());
      }
      neck.playOut(play);
      assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("in-window");
      // No question of identity comes again: each choice stands once in the whole record.
      var choices =
          play.events.stream()
              .filter(Event.Chose.class::isInstance)
              .map(e -> ((Event.Chose) e).step())
              .toList();
      assertThat(choices).containsNoDuplicates();
      assertThat(choices.size()).isAtLeast((int) asked);
    }
  }
}
