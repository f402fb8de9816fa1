package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.session.RefusedException;
import quarterturn.unit.Bracket;

/** What a technician is spared, what nobody is, and what stands on record of it. */
class ShortPathTest {
  private static Play check(Role role) throws Exception {
    return Play.of(Play.library("relief-check"), role, "bass-34", Style.MEDIUM);
  }

  @Test
  void aRoutineCheckAsksForOneConfirmationAndTwoReadings() throws Exception {
    Play play = check(Role.TECHNICIAN);
    assertThat(play.prompt()).isInstanceOf(Prompt.Caution.class);
    play.ok();
    assertThat(play.step()).isEqualTo("low");
    assertThat(play.prompt().said().first().get(0).step()).isEqualTo("tune");
    play.read("0.35..0.40").read("0.35..0.40");
    assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("in-window");
  }

  /** Common practice, no source: trade lore lets a technician pass over explanations. */
  @Test
  void aBeginnerIsSparedNothing() throws Exception {
    Play play = check(Role.BEGINNER);
    assertThat(play.step()).isEqualTo("hold");
    assertThat(play.ok().prompt()).isInstanceOf(Prompt.Caution.class);
    assertThat(play.ok().step()).isEqualTo("tune");
    assertThat(play.ok().prompt()).isInstanceOf(Prompt.Wait.class);
  }

  @Test
  void whatIsMergedIsOnRecordOnlyOnceItIsAnswered() throws Exception {
    Play play = check(Role.TECHNICIAN).ok();
    List<Event> before = List.copyOf(play.events);
    assertThat(before.stream().anyMatch(Event.Told.class::isInstance)).isFalse();
    assertThat(play.bench.standing()).doesNotContain("at pitch");
    play.read("0.35..0.40");
    List<Event> after = play.events.subList(before.size(), play.events.size());
    assertThat(after.stream().<Object>map(Object::getClass).toList())
        .containsExactly(Event.Told.class, Event.Passed.class, Event.Read.class)
        .inOrder();
    assertThat(play.bench.standing()).contains("at pitch");
  }

  @Test
  void aBreakBeforeTheAnswerLeavesItUndone() throws Exception {
    Play play = check(Role.TECHNICIAN).ok().resumeAfter(Duration.ofMinutes(2)).ok();
    assertThat(play.prompt()).isInstanceOf(Prompt.Caution.class);
    play.ok();
    assertThat(play.step()).isEqualTo("low");
    assertThat(play.prompt().said().first()).hasSize(2);
  }

  @Test
  void aReadingTakenBackIsAskedForAloneSinceTheRestIsDone() throws Exception {
    Play play = check(Role.TECHNICIAN).ok().read("0.35..0.40").give(new Answer.Correct());
    assertThat(play.step()).isEqualTo("low");
    assertThat(play.prompt().said().first()).isEmpty();
    play.give(new Answer.Correct());
    assertThat(play.prompt().said().first()).hasSize(2);
  }

  /** Common practice, no source: strings that hung slack or are rusty are not gone on with. */
  @Test
  void theFirstSettleIsPassedOverOnlyByATechnicianWithStringsInGoodOrder() throws Exception {
    Play play = Play.technician("bass-34").to("tune").ok();
    assertThat(play.step()).isEqualTo("found-low");
    play.read("0.35..0.40");
    Event.Passed passed =
        (Event.Passed)
            play.events.stream()
                .filter(e -> e instanceof Event.Passed p && p.step().equals("settle-first"))
                .findFirst()
                .orElseThrow();
    assertThat(passed.why()).isEqualTo("role is technician");
    Play beginner = Play.beginner("bass-34").to("tune").ok();
    assertThat(beginner.prompt()).isInstanceOf(Prompt.Wait.class);
    Play worn = Play.technician("bass-34").to("inspect").choose("worn").choose("end");
    assertThat(((Prompt.Done) worn.prompt()).outcome()).isEqualTo("strings-first");
  }

  /** The reading confirms it, so that it costs neither a prompt nor a line. */
  @Test
  void theFirstReadingConfirmsThatTheStringsHaveStood() throws Exception {
    Play check = check(Role.TECHNICIAN).ok();
    assertThat(firsts(check)).containsExactly("tune", "settle").inOrder();
    assertThat(check.prompt().said().first().get(1).text())
        .isEqualTo("All strings have stood at pitch for 10 min; if not, let them first.");
    assertThat(check.prompt().said().first().get(1).stands()).isFalse();
    assertThat(firsts(check.read("0.35..0.40"))).isEmpty();
    Play relief = Play.technician("bass-34").to("tune").ok();
    assertThat(relief.step()).isEqualTo("found-low");
    assertThat(firsts(relief)).containsExactly("settle-first");
    relief.resumeAfter(Duration.ofMinutes(1)).ok();
    assertThat(firsts(relief)).containsExactly("settle-first");
    assertThat(firsts(relief.read("0.35..0.40"))).isEmpty();
  }

  @Test
  void whereItHasBeenWaitedNobodyConfirmsIt() throws Exception {
    // A reading that can hardly be true has the stage go step by step, the wait with it.
    Play waited = check(Role.TECHNICIAN).ok().read("9.0..9.5").to("tune").ok().waited();
    assertThat(waited.step()).isEqualTo("low");
    assertThat(firsts(waited)).isEmpty();
  }

  private static List<String> firsts(Play play) {
    return play.prompt().said().first().stream().map(PromptText.First::step).toList();
  }

  @Test
  void afterATurnNobodyIsSparedTheSettle() throws Exception {
    Play play = Play.technician("bass-34").to("found-low");
    play.read("0.60..0.65").read("0.60..0.65").read("0.60..0.65").to("turn-rod");
    play.turned(quarterturn.procedure.condition.Feel.SMOOTH);
    assertThat(play.step()).isEqualTo("retune");
    assertThat(play.prompt().said().first().get(0).step()).isEqualTo("key-out");
    assertThat(play.ok().prompt()).isInstanceOf(Prompt.Wait.class);
  }

  @Test
  void beforeTheFirstTurnItsWayIsSaidAndHeldAgainstTheReading() throws Exception {
    Play play = Play.technician("bass-34").to("found-low");
    play.read("0.60..0.65").read("0.60..0.65").read("0.55..0.60").to("key-fit").choose("fits");
    assertThat(play.step()).isEqualTo("direction");
    assertThat(play.prompt().said().text()).contains("1 of 1  direction: ?");
    RefusedException no =
        assertThrows(RefusedException.class, () -> play.bench.answer(new Answer.Chose("loosen")));
    assertThat(no).hasMessageThat().contains("On record stands direction: tighten");
    assertThrows(RefusedException.class, () -> play.bench.answer(new Answer.Confirmed()));
    play.choose("tighten");
    assertThat(play.events.stream().filter(Event.ReadBack.class::isInstance).count()).isEqualTo(1);
  }

  @Test
  void beforeTheSecondTurnThereIsNoList() throws Exception {
    Play play = Play.technician("bass-34").to("found-low");
    play.read("1.00..1.05").read("1.00..1.05").read("1.00..1.05").to("turn-rod");
    play.turned(quarterturn.procedure.condition.Feel.SMOOTH).to("read-low").read("0.85..0.90");
    int said = (int) play.events.stream().filter(Event.ReadBack.class::isInstance).count();
    play.to("turn-rod");
    assertThat(play.events.stream().filter(Event.ReadBack.class::isInstance).count())
        .isEqualTo(said);
  }

  @Test
  void aReadingThatCanHardlyBeTrueMakesTheStageGoStepByStep() throws Exception {
    Play play = check(Role.TECHNICIAN).ok().read("9.0..9.5");
    assertThat(play.prompt()).isInstanceOf(Prompt.Tell.class);
    assertThat(play.step()).isEqualTo("tune");
    assertThat(play.prompt().said().notes().get(0)).contains("not plausible for relief");
    assertThat(play.prompt().said().text()).startsWith("Without a capo");
    assertThat(play.state().history().readings()).isEmpty();
    assertThat(play.ok().prompt()).isInstanceOf(Prompt.Wait.class);
  }

  @Test
  void theStageAfterThatIsShortAgain() throws Exception {
    Play play =
        Play.of(
            Play.library("action"),
            Role.TECHNICIAN,
            "bass-34",
            Style.MEDIUM,
            new Event.Before(
                Play.NOON, Quantity.RELIEF, "E1", new Bracket(0.35, 0.40), null, List.of()));
    play.to("read").give(new Answer.Value(99));
    assertThat(play.state().position().stepwise()).isEqualTo("action");
    assertThat(ShortPath.taken(play.state())).isFalse();
  }
}
