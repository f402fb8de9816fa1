package quarterturn.rehearsal;

import static com.google.common.truth.Truth.assertWithMessage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.kind.Quantity;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.Prompt;

/**
 * How much a beginner is asked. Each value typed counts as one, and so does each confirmation; an
 * unnamed instrument adds what kind it is and how it is played. The bounds are ours.
 */
class PromptCountTest {
  /** Of an unnamed instrument: what it is, and how hard it is played. */
  private static final int UNKNOWN = 2;

  private record Count(int firstReading, int firstTurn, int all, List<Integer> turns) {}

  private static Count of(NamedNeck neck, String procedure) throws Exception {
    PracticeBench bench = Practising.on(neck, procedure, "bass-34");
    int reading = 0;
    List<Integer> turns = new ArrayList<>();
    int all = UNKNOWN;
    for (; !bench.prompt().ended() && all < 900; ) {
      all++;
      Prompt prompt = bench.prompt();
      if (System.getProperty("print") != null) {
        System.out.println(all + " " + prompt.getClass().getSimpleName() + " " + prompt.said().procedure() + "/" + prompt.said().step());
      }
      if (reading == 0
          && prompt instanceof Prompt.Measure measure
          && measure.quantity() == Quantity.RELIEF) {
        reading = all;
      }
      if (prompt instanceof Prompt.TurnRod) {
        turns.add(all);
      }
      bench.answer(bench.truth());
    }
    return new Count(reading, turns.isEmpty() ? 0 : turns.get(0), all + 1, turns);
  }

  @Test
  void aReliefThatNeedsTwoTurns() throws Exception {
    Count count = of(NamedNeck.TOO_MUCH, "relief");
    System.out.println(count);
    assertWithMessage("turns of %s", count).that(count.turns()).hasSize(2);
    assertWithMessage("first reading of %s", count).that(count.firstReading()).isAtMost(9);
    assertWithMessage("first turn of %s", count).that(count.firstTurn()).isAtMost(20);
    assertWithMessage("done of %s", count).that(count.all()).isAtMost(38);
  }

  @Test
  void aNeckThatIsFine() throws Exception {
    Count count = of(NamedNeck.RIGHT, "relief");
    System.out.println(count);
    assertWithMessage("%s", count).that(count.all()).isAtMost(14);
  }

  @Test
  void theSetUpOfTheNeglectedBass() throws Exception {
    Count count = of(NamedNeck.NEGLECTED, "setup");
    System.out.println(count);
    assertWithMessage("%s", count).that(count.all()).isAtMost(110);
  }
}
