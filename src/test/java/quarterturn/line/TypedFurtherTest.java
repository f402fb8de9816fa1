package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Role;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.unit.Dates;

/** What a technician types for more than the prompt at hand, on simulated instruments. */
class TypedFurtherTest {
  private final StringWriter out = new StringWriter();

  private PracticeBench type(String procedure, NamedNeck neck, Role role, String... lines)
      throws Exception {
    PracticeBench bench = Practising.on(neck, procedure, "bass-34", role);
    further(bench, String.join("\n", lines));
    return bench;
  }

  /** A technician on a neck with too much relief, up to a step. */
  private static PracticeBench at(String step) throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.TOO_MUCH, "relief", "bass-34", Role.TECHNICIAN);
    while (!bench.prompt().said().step().equals(step)) {
      bench.answer(bench.truth());
    }
    return bench;
  }

  private void further(PracticeBench bench, String line) throws Exception {
    PrintWriter writer = new PrintWriter(out);
    LineSource source = new PipeSource(new StringReader(line + "\n"), writer, false);
    LineFace.run(bench, source, writer, new Dates(ZoneOffset.UTC));
  }

  private static long count(PracticeBench bench, Class<? extends Event> kind) {
    return bench.events().stream().filter(kind::isInstance).count();
  }

  @Test
  void wordsForTheNextQuestionsAreTakenUpToWhatTheyDoNotFit() throws Exception {
    PracticeBench bench =
        type("intake", NamedNeck.RIGHT, Role.TECHNICIAN, "u", "-", "ordinary; sound; even; snug");
    // Nothing but an answer to the question about the hardware is taken there.
    assertThat(count(bench, Event.Chose.class)).isEqualTo(2);
    assertThat(out.toString()).contains("Stopped before hardware: one of snug");
  }

  @Test
  void wordsForTheNextQuestionsAreTakenUpToAHazard() throws Exception {
    PracticeBench bench = at("changed");
    int before = (int) count(bench, Event.Chose.class);
    further(bench, "nothing; under-plate; lifts; single");
    assertThat(count(bench, Event.Chose.class)).isEqualTo(before + 2);
    assertThat(bench.prompt()).isInstanceOf(Prompt.Caution.class);
    assertThat(out.toString())
        .contains("Stopped before \"Read this before you go on.\": that is to be seen first.");
  }

  @Test
  void aNumberIsNoAnswerToAQuestionThatIsNotOnView() throws Exception {
    PracticeBench bench =
        type("intake", NamedNeck.RIGHT, Role.TECHNICIAN, "u", "-", "ordinary; 1; even");
    assertThat(count(bench, Event.Chose.class)).isEqualTo(1);
  }

  @Test
  void aBeginnerSeesEachQuestionFirst() throws Exception {
    PracticeBench bench =
        type("intake", NamedNeck.RIGHT, Role.BEGINNER, "u", "", "", "-", "ordinary; sound; even");
    assertThat(count(bench, Event.Chose.class)).isEqualTo(0);
  }

  @Test
  void aReadingTypedBeforeTheStringsAreTunedIsNotTaken() throws Exception {
    PracticeBench bench =
        type("relief-check", NamedNeck.RIGHT, Role.TECHNICIAN, "u; relief .40 low .38 high");
    assertThat(count(bench, Event.Read.class)).isEqualTo(0);
    assertThat(out.toString()).contains("Not used, since something came in between");
  }

  @Test
  void aHazardIsAcceptedByItsOwnAnswerAlone() throws Exception {
    PracticeBench bench = type("relief-check", NamedNeck.RIGHT, Role.TECHNICIAN, "u; u; u");
    assertThat(count(bench, Event.Accepted.class)).isAtMost(1);
    assertThat(count(bench, Event.Told.class)).isEqualTo(0);
  }

  @Test
  void wordsByNameAndTheRestOfALine() throws Exception {
    PracticeBench bench =
        type(
            "intake",
            NamedNeck.RIGHT,
            Role.TECHNICIAN,
            "u; complaint it buzzes, low down; build ordinary; inspect sound; hardware snug",
            "frets even; gauges .105 .085 .065 .045");
    assertThat(bench.events().toString()).contains("text=it buzzes, low down");
    assertThat(bench.events().toString()).contains("text=.105 .085 .065 .045");
  }

  /** The list before the first turn: nothing that was typed before it is on view answers it. */
  @Test
  void aPauseIsReadBeforeItIsAnswered() throws Exception {
    PracticeBench bench = at("key-fit");
    further(bench, "key-fit fits; direction tighten");
    assertThat(count(bench, Event.ReadBack.class)).isEqualTo(0);
    assertThat(out.toString()).contains("1 of 1  direction: ?");
    assertThat(out.toString()).contains("Not used");
  }

  @Test
  void aSlippedPointIsAskedAgain() throws Exception {
    for (String typed : List.of("37", "relief 37 low", "37 36; fits")) {
      PracticeBench bench = at("found-low");
      further(bench, typed);
      assertThat(count(bench, Event.Read.class)).isEqualTo(0);
      assertThat(count(bench, Event.Doubted.class)).isEqualTo(0);
    }
    assertThat(out.toString()).contains("mm is not plausible for relief");
  }

  @Test
  void undoTakesTheLastAnswerBackAndNextTellsWhatComes() throws Exception {
    PracticeBench bench =
        type("intake", NamedNeck.RIGHT, Role.TECHNICIAN, "u", "-", "ordinary", "undo", "next");
    assertThat(count(bench, Event.Corrected.class)).isEqualTo(1);
    assertThat(out.toString()).contains("Next: if ordinary: inspect (");
  }
}
