package quarterturn.lesson;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.PlanFile;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.unit.NotUnderstoodException;

class PlanningTest {
  private static final Planning.Known KNOWN =
      new Planning.Known(
          "relief",
          Set.of("relief", "season"),
          Set.of("bass-34"),
          step -> step.equals("relief/confirm"));

  private static Plan plan(Map<PlanPart, String> typed) {
    return Planning.of("2027-03-01-1-x", typed, KNOWN);
  }

  @Test
  void nothingTypedIsTheUsualPlan() {
    Plan plan = plan(Map.of());
    assertThat(plan.procedures()).containsExactly("relief");
    assertThat(plan.instruments())
        .containsExactly(new Plan.Setup(null, "bass-34", NamedNeck.TOO_MUCH, 1));
    assertThat(plan.everyTurn()).isTrue();
    assertThat(plan.blind()).isFalse();
    assertThat(plan.students()).isEmpty();
    assertThat(plan.questions()).isEqualTo(Questioning.SOME);
  }

  @Test
  void oneFaultEachAndWhoIsExpected() throws Exception {
    Plan plan =
        plan(
            Map.of(
                PlanPart.NECKS, "left=dead, Right = jammed,door=real",
                PlanPart.PROCEDURES, "relief, season",
                PlanPart.HOLDS, "every turn, relief/confirm",
                PlanPart.STUDENTS, "Ana, Ben",
                PlanPart.QUESTIONS, "few",
                PlanPart.BLIND, "yes"));
    assertThat(plan.forBench("left"))
        .isEqualTo(new Plan.Setup("left", "bass-34", NamedNeck.DEAD, 1));
    assertThat(plan.forBench("right"))
        .isEqualTo(new Plan.Setup("right", "bass-34", NamedNeck.JAMMED, 2));
    assertThat(plan.forBench("door")).isEqualTo(new Plan.Setup("door", "bass-34", null, 3));
    assertThat(plan.forBench("window")).isNull();
    assertThat(plan.holds()).containsExactly("relief/confirm");
    assertThat(plan.students()).containsExactly("Ana", "Ben").inOrder();
    byte[] text = PlanFile.text(plan).getBytes(StandardCharsets.UTF_8);
    String read = PlanFile.text(PlanFile.read(LessonFolder.PLAN, text));
    assertThat(read).isEqualTo(PlanFile.text(plan));
    assertThat(read).contains("students:\n- Ana\n- Ben");
    assertThat(read).contains("questions: few\n");
    byte[] earlier = read.replace("questions: few\n", "").getBytes(StandardCharsets.UTF_8);
    assertThat(PlanFile.read(LessonFolder.PLAN, earlier).questions()).isEqualTo(Questioning.SOME);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PROCEDURES|nosuch|there is no procedure nosuch; choose from relief, season",
        "PROCEDURES|,|name one procedure at least",
        "KIND|banjo|there is no kind banjo; choose from bass-34",
        "NECKS|banana|there is no neck of that name",
        "NECKS|dead, slow|one neck serves all benches",
        "NECKS|a=dead, a=slow|bench a has two necks",
        "NECKS|a b=dead|can't name a bench",
        "LEVEL|easy|choose a level: worked, last-missing",
        "HOLDS|nosuch|there is no step nosuch to hold at",
        "BLIND|perhaps|blind takes yes or no",
        "QUESTIONS|many|questions takes few, some or all",
        "TITLE|a {b}|without braces",
        "STUDENTS|'Ana,,Ben'|is no name",
      })
  void aSlipSaysWhatIsTaken(PlanPart part, String typed, String says) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> plan(Map.of(part, typed)));
    assertThat(e).hasMessageThat().contains(says);
  }

  @Test
  void idsSortByWhenLessonsWereMade() {
    LocalDate day = LocalDate.of(2027, 3, 1);
    String first = Planning.id(day, "Zero turns, first!", List.of());
    String second =
        Planning.id(day, "A second one with a title that is far too long", List.of(first));
    assertThat(first).isEqualTo("2027-03-01-1-zero-turns-first");
    assertThat(second).isGreaterThan(first);
    assertThat(second.length()).isAtMost(40);
    assertThat(Planning.id(day.plusDays(1), "Another", List.of(first, second)))
        .isEqualTo("2027-03-02-1-another");
  }
}
