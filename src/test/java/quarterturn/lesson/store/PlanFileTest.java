package quarterturn.lesson.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.lesson.Demo;
import quarterturn.lesson.Level;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Questioning;
import quarterturn.procedure.Fault;
import quarterturn.procedure.UnreadableException;
import quarterturn.rehearsal.simulated.NamedNeck;

class PlanFileTest {
  private static final String GOOD =
      """
      lesson: 2027-03-01-demo
      title: Demo
      procedures: [relief]
      instruments:
        - kind: bass-34
          neck: too-much
          seed: 7
        - bench: window
          kind: bass-34
          neck: real
      level: worked
      holds: [every turn, relief/read]
      blind: true
      """;

  private static Plan read(String text) throws UnreadableException {
    return PlanFile.read("lesson.yaml", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aPlanIsReadAsItIsWritten() throws UnreadableException {
    Plan plan = read(GOOD);
    assertThat(plan.procedures()).containsExactly("relief");
    assertThat(plan.everyTurn()).isTrue();
    assertThat(plan.forBench("door"))
        .isEqualTo(new Plan.Setup(null, "bass-34", NamedNeck.TOO_MUCH, 7));
    assertThat(plan.forBench("window")).isEqualTo(new Plan.Setup("window", "bass-34", null, 1));
    assertThat(plan.holds(Demo.spot("read", 1), false)).isTrue();
    assertThat(plan.holds(Demo.spot("look", 1), false)).isFalse();
    assertThat(plan.holds(Demo.spot("look", 1), true)).isTrue();
  }

  @Test
  void whatIsWrittenIsReadAgain() throws UnreadableException {
    assertThat(read(PlanFile.text(Demo.PLAN))).isEqualTo(Demo.PLAN);
    assertThat(read(PlanFile.text(read(GOOD)))).isEqualTo(read(GOOD));
    Plan awkward =
        new Plan(
            "2027-03-01-x",
            "Yes: 1/4 turn, no # more",
            List.of("relief"),
            Demo.PLAN.instruments(),
            Level.OWN,
            false,
            List.of("true"),
            false,
            List.of(),
            Map.of(),
            Questioning.SOME);
    assertThat(read(PlanFile.text(awkward))).isEqualTo(awkward);
  }

  @ParameterizedTest
  @CsvSource({
    "level: worked,level: easy,lesson.yaml:11:8,is not a level",
    "neck: too-much,neck: banana,lesson.yaml:6:11,is not a neck",
    "seed: 7,seed: many,lesson.yaml:7:11,is no whole number",
    "title: Demo,titel: Demo,lesson.yaml:2:1,has no key",
    "bench: window,bench: window {x},lesson.yaml:8:12,braces",
    "procedures: [relief],procedures: [],lesson.yaml:3:13,no procedure is named",
    "blind: true,blind: maybe,lesson.yaml:13:8,neither true nor false",
    "'every turn, relief/read',Every Turn,lesson.yaml:12:8,is no hold point",
  })
  void aFaultNamesItsLineAndColumn(String what, String by, String place, String wrong) {
    String text = GOOD.replace(what, by);
    assertThat(text).isNotEqualTo(GOOD);
    UnreadableException e = assertThrows(UnreadableException.class, () -> read(text));
    assertThat(e.faults().stream().map(Fault::toString).filter(f -> f.startsWith(place + ":")))
        .isNotEmpty();
    assertThat(e).hasMessageThat().contains(wrong);
  }

  @Test
  void twoInstrumentsForOneBenchAreRefused() {
    UnreadableException e =
        assertThrows(
            UnreadableException.class,
            () -> read(GOOD.replace("  - bench: window\n    kind", "  - kind")));
    assertThat(e).hasMessageThat().contains("two instruments for every bench");
  }
}
