package quarterturn.rehearsal;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterturn.procedure.kind.Which;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.unit.Bracket;
import quarterturn.unit.NotUnderstoodException;

class PracticeBenchTest {
  /** What each named neck is there to teach. */
  private static final Map<NamedNeck, String> ENDS =
      Map.ofEntries(
          Map.entry(NamedNeck.TOO_MUCH, "in-window"),
          Map.entry(NamedNeck.BACK_BOW, "in-window"),
          Map.entry(NamedNeck.RIGHT, "in-window"),
          Map.entry(NamedNeck.SLOW, "in-window"),
          Map.entry(NamedNeck.LIVELY, "in-window"),
          Map.entry(NamedNeck.SLACK, "in-window"),
          Map.entry(NamedNeck.STIFF, "in-window"),
          Map.entry(NamedNeck.DEAD, "no-response"),
          Map.entry(NamedNeck.REVERSED, "wrong-way"),
          Map.entry(NamedNeck.JAMMED, "jammed"),
          Map.entry(NamedNeck.STRIPPED, "stripped"),
          Map.entry(NamedNeck.FULLY_TIGHT, "end-of-travel"),
          Map.entry(NamedNeck.FULLY_LOOSE, "fully-loose"),
          Map.entry(NamedNeck.TWISTED, "twist"),
          Map.entry(NamedNeck.NEGLECTED, "in-window"),
          Map.entry(NamedNeck.CRACKED, "damage"));

  private static PracticeBench playedOut(PracticeBench bench) throws Exception {
    for (int i = 0; i < 500 && !bench.prompt().ended(); i++) {
      bench.answer(bench.truth());
    }
    return bench;
  }

  private static String outcome(PracticeBench bench) {
    return bench.prompt() instanceof Prompt.Done done
        ? done.outcome()
        : ((Prompt.HandOver) bench.prompt()).outcome();
  }

  private static String notes(PracticeBench bench) {
    return String.join("\n", bench.prompt().said().notes());
  }

  @ParameterizedTest
  @EnumSource(NamedNeck.class)
  void everyNamedNeckEndsAsItShould(NamedNeck neck) throws Exception {
    PracticeBench bench = playedOut(Practising.on(neck));
    assertThat(outcome(bench)).isEqualTo(ENDS.get(neck));
    assertThat(notes(bench)).contains(neck.traits().fault().words());
    assertThat(notes(bench)).contains("True relief as found");
  }

  @Test
  void theTruthIsHiddenUntilTheEnd() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.DEAD);
    assertThat(notes(bench)).contains("Hello.");
    while (!bench.prompt().ended()) {
      assertThat(notes(bench)).doesNotContain("really was");
      assertThat(notes(bench)).doesNotContain("does nothing");
      assertThat(bench.prompt().toString()).doesNotContain("True relief");
      bench.answer(bench.truth());
    }
    assertThat(notes(bench)).contains("The neck as it really was: the rod does nothing.");
    assertThrows(IllegalStateException.class, bench::truth);
  }

  @Test
  void readingsAreSeenAndStayWhileTheyAreLookedAt() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.TOO_MUCH);
    while (!(bench.prompt() instanceof Prompt.Measure m && m.which() == Which.LOWEST)) {
      bench.answer(bench.truth());
    }
    String shown = ((Answer.Measured) bench.truth()).bracket().typed();
    assertThat(notes(bench)).contains("What the gauges show: " + shown + ".");
    assertThat(bench.prompt()).isSameInstanceAs(bench.prompt());
    assertThrows(RefusedException.class, () -> bench.answer(new Answer.Confirmed()));
    assertThat(notes(bench)).contains(shown);
  }

  @Test
  void aReadingGivenWronglyIsTakenAndHeldAgainstTheLeavesAtTheEnd() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.TOO_MUCH);
    boolean given = false;
    while (!bench.prompt().ended()) {
      boolean lowest = bench.prompt() instanceof Prompt.Measure m && m.which() == Which.LOWEST;
      if (lowest && !given) {
        given = true;
        bench.answer(new Answer.Measured(new Bracket(0.80, 0.85)));
      } else {
        bench.answer(bench.truth());
      }
    }
    assertThat(notes(bench))
        .contains("given as 0.80 to 0.85 mm, the gauges showed 0.70 to 0.75 mm");
  }

  @Test
  void waitsPassAtOnceAndTheClockWithThem() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.TOO_MUCH);
    while (!(bench.prompt() instanceof Prompt.Wait)) {
      bench.answer(bench.truth());
    }
    Prompt.Wait wait = (Prompt.Wait) bench.prompt();
    assertThat(bench.now()).isAtLeast(wait.until());
    assertThat(notes(bench)).contains("the time has passed already");
    bench.answer(new Answer.Waited(null));
  }

  @Test
  void nothingIsKeptAndTheFacesKnow() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.RIGHT);
    assertThat(bench.overview().kept()).isFalse();
    assertThat(bench.overview().instrument()).startsWith("Rehearsal: ");
  }

  @Test
  void whatIsTurnedIsWhatThePersonSaysTheyTurned() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.TOO_MUCH);
    while (!(bench.prompt() instanceof Prompt.TurnRod)) {
      bench.answer(bench.truth());
    }
    double before = bench.neck().relief();
    Prompt.TurnRod turn = (Prompt.TurnRod) bench.prompt();
    bench.answer(
        new Answer.Turned(turn.turn().opposite(), quarterturn.procedure.condition.Feel.SMOOTH));
    assertThat(bench.neck().relief()).isGreaterThan(before);
  }

  @Test
  void anUnknownNeckIsAnsweredWithAllNames() {
    NotUnderstoodException refused =
        assertThrows(NotUnderstoodException.class, () -> NamedNeck.of("nosuch"));
    for (NamedNeck neck : NamedNeck.values()) {
      assertThat(refused).hasMessageThat().contains(neck.word());
      assertThat(NamedNeck.of(neck.word())).isEqualTo(neck);
    }
  }

  @Test
  void aReadingThatWasTakenBackIsNotAmongThoseToldAtTheEnd() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.RIGHT);
    while (!(bench.prompt() instanceof Prompt.Measure)) {
      bench.answer(bench.truth());
    }
    bench.answer(new Answer.Measured(new Bracket(2.0, 2.05)));
    bench.answer(new Answer.Correct());
    playedOut(bench);
    assertThat(notes(bench)).contains("True relief in mm at each reading: ");
    assertThat(notes(bench)).doesNotContain("2.00 to 2.05");
  }

  /** Whoever asks to take a turn back and says that it was made has turned this neck too. */
  @Test
  void aTurnThatIsToldWhenItIsAskedAboutMovesTheNeck() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.TOO_MUCH);
    while (!(bench.prompt() instanceof Prompt.TurnRod)) {
      bench.answer(bench.truth());
    }
    bench.answer(new Answer.Correct());
    bench.answer(new Answer.Chose("made"));
    while (!(bench.prompt() instanceof Prompt.Measure)) {
      bench.answer(bench.truth());
    }
    Bracket read = ((Answer.Measured) bench.truth()).bracket();
    assertThat(read.highMm()).isLessThan(0.66);
  }
}
