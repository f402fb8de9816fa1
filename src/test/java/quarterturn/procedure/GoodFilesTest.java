package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.procedure.read.ProcedureReader;
import quarterturn.procedure.read.Readings;
import quarterturn.unit.Turn;

class GoodFilesTest {
  private static Procedure everyStep() throws UnreadableException {
    return Readings.procedure(
        "every-step.yaml", Readings.bytes("good/every-step.yaml"), Readings.HAZARDS);
  }

  @Test
  void eachIsRead() throws IOException {
    assertThat(Readings.files("good").size()).isAtLeast(3);
    for (Path file : Readings.files("good")) {
      String name = file.getFileName().toString();
      assertWithMessage(name).that(Readings.complaint(name, Files.readAllBytes(file))).isEmpty();
    }
  }

  @Test
  void theHeadOfAProcedure() throws UnreadableException {
    Procedure procedure = everyStep();
    assertThat(procedure.id()).isEqualTo("every-step");
    assertThat(procedure.revision()).isEqualTo(3);
    assertThat(procedure.tools()).containsExactly("capo", "feeler leaves").inOrder();
    assertThat(procedure.begin()).isEqualTo("welcome");
    assertThat(procedure.steps().keySet())
        .containsExactly(
            "welcome",
            "rod-place",
            "tune",
            "room",
            "season",
            "read-low",
            "decide",
            "turn-rod",
            "loosen-rod",
            "settle",
            "fine",
            "stop")
        .inOrder();
  }

  @Test
  void theDigestIsThatOfTheBytes() throws UnreadableException {

    String text =
        "{procedure: a, revision: 1, title: A, purpose: A, tools: [], begin: e, retune: e, reread:"
            + " e, steps: [{part: P}, {done: e, text: E, outcome: e}]}";
    Procedure one = Readings.procedure("a", Readings.utf8(text), List.of());
    Procedure other = Readings.procedure("a", Readings.utf8(text + " "), List.of());
    assertThat(one.digest()).matches("[0-9a-f]{64}");
    assertThat(other.digest()).isNotEqualTo(one.digest());
    // FIPS 180-2, appendix B.1.
    assertThat(ProcedureReader.digest(Readings.utf8("abc")))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  @Test
  void whatAStepSays() throws UnreadableException {
    Words words = everyStep().step("welcome").words();
    assertThat(words)
        .isEqualTo(
            new Words(
                "Get ready",
                "Lay the {kind} on a soft cloth. Support the neck.",
                "Support the neck; window {window}.",
                "It's read the same way each time.",
                List.of(
                    new LessonQuestion("What is the string for?", null),
                    new LessonQuestion("Which fret is held: {joint}?", null),
                    new LessonQuestion("Does the gap grow?", "read-low"),
                    new LessonQuestion(
                        LessonQuestion.Kind.IDEA,
                        "The string is left slack. What does the gap do?",
                        "read-low",
                        "It shrinks.",
                        List.of(
                            new LessonQuestion.Idea("It grows.", "Nothing pulls the neck forward."),
                            new LessonQuestion.Idea(
                                "It stays.", "The {kind} holds the string's pull."))),
                    new LessonQuestion(
                        LessonQuestion.Kind.CHECK, "Why?", null, "The string pulls.", List.of())),
                Readings.HAZARDS,
                true,
                Picture.HOLD,
                null,
                null));
    assertThat(everyStep().step("tune").words().text())
        .isEqualTo("Bring every string to pitch.\n\nPlay each one.");
  }

  @Test
  void marksPointAtTheStep() throws UnreadableException {
    assertThat(everyStep().step("rod-place").mark()).isEqualTo(new Mark("every-step.yaml", 36, 5));
  }

  @Test
  void aMeasureStep() throws UnreadableException {
    Step.Measure measure = (Step.Measure) everyStep().step("read-low");
    assertThat(measure.quantity()).isEqualTo(Quantity.RELIEF);
    assertThat(measure.which()).isEqualTo(Which.LOWEST);
    assertThat(measure.least()).isWithin(1e-12).of(0);
    assertThat(measure.most()).isWithin(1e-12).of(3);
    assertThat(measure.step()).isWithin(1e-12).of(0.05);
    assertThat(measure.then().branches()).hasSize(6);
    assertThat(measure.then().otherwise()).isNull();
    assertThat(((Step.Measure) everyStep().step("room")).which()).isNull();
  }

  @Test
  void turnStepsAndTheirFeels() throws UnreadableException {
    Step.TurnRod advised = (Step.TurnRod) everyStep().step("turn-rod");
    assertThat(advised.amount()).isEqualTo(new Step.Amount.Advised());
    assertThat(advised.limit()).isEqualTo(Turn.QUARTER);
    Step.TurnRod loosen = (Step.TurnRod) everyStep().step("loosen-rod");
    assertThat(loosen.amount()).isEqualTo(new Step.Amount.Fixed(Turn.SIXTEENTH.opposite()));
    assertThat(loosen.felt())
        .isEqualTo(
            Map.of(
                Feel.SMOOTH, "settle",
                Feel.STIFF, "settle",
                Feel.JAMMED, "stop",
                Feel.FREE, "stop",
                Feel.NOISE, "stop",
                Feel.SLIPPED, "stop"));
  }

  @Test
  void waitCallComputeAndTheEnds() throws UnreadableException {
    Step.Wait wait = (Step.Wait) everyStep().step("settle");
    assertThat(wait.minutes()).isEqualTo(2 * 24 * 60);
    assertThat(wait.rest()).isTrue();
    assertThat(wait.establishes()).containsExactly(Fact.SETTLED);
    assertThat(((Step.Call) everyStep().step("season")).procedure()).isEqualTo("season");
    Step.Compute compute = (Step.Compute) everyStep().step("decide");
    assertThat(compute.words().text()).isEmpty();
    assertThat(compute.then().otherwise()).isEqualTo("turn-rod");
    assertThat(((Step.Done) everyStep().step("fine")).outcome()).isEqualTo("in-window");
    assertThat(((Step.HandOver) everyStep().step("stop")).outcome()).isEqualTo("jammed");
  }

  @Test
  void optionsKeepTheirOrderAndFacts() throws UnreadableException {
    Step.Choose choose = (Step.Choose) everyStep().step("rod-place");
    assertThat(choose.options())
        .containsExactly(
            new Step.Option(
                "headstock", "At the headstock", Set.of(Fact.ROD_IDENTIFIED), null, "tune"),
            new Step.Option("pocket", "In the pocket", Set.of(), null, "stop"))
        .inOrder();
  }
}
