package quarterturn.rehearsal;

import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.Prompt;

/**
 * How much a beginner is asked. Each value typed counts as one, and so does each confirmation and
 * the page at the end. The bounds are ours.
 */
class PromptCountTest {
  /** Of an instrument without a name: what it is, and how hard it is played. */
  private static final int UNKNOWN = 2;

  private static final int SEEDS = 20;
  private static final Duration DAY = Duration.ofDays(1);

  /**
   * The prompts of one session, by number.
   *
   * @param turns the numbers of its turns
   * @param rested whether it was left for a day
   */
  private record Count(int firstReading, List<Integer> turns, boolean rested, List<String> steps) {
    int all() {
      return UNKNOWN + steps.size();
    }

    @Override
    public String toString() {
      String listed =
          steps.stream()
              .map(step -> step.substring(step.indexOf('/') + 1))
              .collect(Collectors.joining(" "));
      return "%d prompts, first reading %d, turns %s: %s"
          .formatted(all(), firstReading, turns, listed);
    }
  }

  private static Count of(NamedNeck neck, Library library, long seed) throws Exception {
    PracticeBench bench = Practising.on(neck, library, "bass-34", Role.BEGINNER, seed);
    int reading = 0;
    List<Integer> turns = new ArrayList<>();
    List<String> steps = new ArrayList<>();
    boolean rested = false;
    while (steps.size() < 900) {
      Prompt prompt = bench.prompt();
      steps.add(prompt.said().procedure() + "/" + prompt.said().step());
      if (prompt.ended()) {
        break;
      }
      int number = UNKNOWN + steps.size();
      boolean relief =
          prompt instanceof Prompt.Measure measure && measure.quantity() == Quantity.RELIEF;
      reading = reading == 0 && relief ? number : reading;
      rested |= prompt instanceof Prompt.Wait wait && wait.length().compareTo(DAY) >= 0;
      if (prompt instanceof Prompt.TurnRod) {
        turns.add(number);
      }
      bench.answer(bench.truth());
    }
    return new Count(reading, turns, rested, steps);
  }

  @Test
  void aReliefThatNeedsTwoTurns() throws Exception {
    Library library = new Shelf(null).load("relief");
    int twice = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Count count = of(NamedNeck.TOO_MUCH, library, seed);
      assertWithMessage("first reading of %s", count).that(count.firstReading()).isAtMost(9);
      assertWithMessage("first turn of %s", count).that(count.turns().get(0)).isAtMost(20);
      if (count.turns().size() == 2 && !count.rested()) {
        assertWithMessage("all of %s", count).that(count.all()).isAtMost(38);
        if (twice++ == 0) {
          System.out.println("relief, two turns: " + count);
        }
      }
    }
    assertWithMessage("two turns").that(twice).isGreaterThan(0);
  }

  @Test
  void aNeckThatIsFine() throws Exception {
    Count count = of(NamedNeck.RIGHT, new Shelf(null).load("relief"), 0);
    System.out.println("relief, nothing to turn: " + count);
    assertWithMessage("turns of %s", count).that(count.turns()).isEmpty();
    assertWithMessage("%s", count).that(count.all()).isAtMost(14);
  }

  @Test
  void theSetUpOfTheNeglectedBass() throws Exception {
    Count count =
        of(NamedNeck.NEGLECTED, new Shelf(null).load("setup"), NamedNeck.NEGLECTED.ordinal());
    System.out.println("set-up of the neglected bass: " + count);
    assertWithMessage("%s", count).that(count.all()).isAtMost(110);
  }
}
