package quarterturn.session;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Role;
import quarterturn.procedure.Step;
import quarterturn.procedure.Style;
import quarterturn.procedure.Ways;
import quarterturn.unit.Bracket;

/** Walks every branch of the shipped relief procedure by seeded answers. */
class WalkTest {
  private static final int SESSIONS = 16_000;

  /** Taken by {@link SetupWalkTest}. */
  private static final Set<String> WITHIN_A_LARGER_JOB =
      Set.of("come-in -> rod-place", "come-in -> hold-ready", "play-gate -> turned-or-not");

  @Test
  void everyBranchIsTaken() throws Exception {
    Library library = Play.relief();
    Set<String> wanted = branches(library.procedure("relief"));
    assertThat(wanted.size()).isAtLeast(150);
    Set<String> taken = new TreeSet<>();
    Set<String> outcomes = new TreeSet<>();
    for (int seed = 0; seed < SESSIONS; seed++) {
      Play play = play(library, new Random(seed));
      List<Place> path = play.state().path;
      for (int i = 1; i < path.size(); i++) {
        taken.add(path.get(i - 1).step() + " -> " + path.get(i).step());
      }
      if (play.prompt() instanceof Prompt.HandOver over) {
        outcomes.add(over.outcome());
        assertWithMessage("%s", play.events).that(over.outcome()).isNotEqualTo("procedure-fault");
      }
    }
    Set<String> missed = new TreeSet<>(wanted);
    missed.removeAll(taken);
    assertThat(missed).containsExactlyElementsIn(WITHIN_A_LARGER_JOB);
    assertThat(outcomes).containsAtLeast("jammed", "no-response", "wrong-way", "limit", "no-rod");
  }

  private static Set<String> branches(Procedure procedure) {
    Set<String> all = new TreeSet<>();
    for (Step step : procedure.steps().values()) {
      Ways.from(step).forEach(go -> all.add(step.id() + " -> " + go));
    }
    return all;
  }

  /** One session with a neck, faults and slips drawn from {@code random}. */
  private static Play play(Library library, Random random) throws Exception {
    boolean pocket = random.nextInt(8) == 0;
    Role role = pocket || random.nextInt(4) == 0 ? Role.TECHNICIAN : Role.BEGINNER;
    Play play = Play.of(library, role, "bass-34", Style.MEDIUM);
    double[] responses = {0, 0, 0.1, 0.2, 0.2, 0.3, -0.3};
    BenchNeck neck = new BenchNeck(-0.4 + 1.6 * random.nextDouble(), responses[random.nextInt(7)]);
    boolean twisted = random.nextInt(6) == 0;
    int habit = random.nextInt(3) == 0 ? random.nextInt(1000) : 0;
    boolean careless = random.nextInt(4) == 0;
    Feel usual = random.nextInt(3) == 0 ? feel(random) : Feel.SMOOTH;
    for (int i = 0; i < 150 && !play.prompt().ended(); i++) {
      Prompt prompt = play.prompt();
      if (careless && random.nextInt(40) == 0) {
        play.resumeAfter(Duration.ofMinutes(random.nextInt(5000)));
      } else if (prompt instanceof Prompt.Choose choose) {
        int last = choose.options().size();
        boolean wide = last > 3 || choose.said().step().equals("rod-kind");
        boolean other = random.nextInt(wide ? 2 : 6) == 0;
        int option = other ? random.nextInt(last) : 0;
        if (pocket && choose.said().step().equals("rod-place")) {
          option = choose.options().stream().map(Prompt.Option::id).toList().indexOf("pocket");
        } else if (habit > 0 && Math.floorMod(choose.said().step().hashCode() + habit, 3) == 0) {
          option = habit % last;
        }
        play.choose(choose.options().get(option).id());
      } else if (prompt instanceof Prompt.Measure measure) {
        read(play, measure, neck, twisted, random);
      } else if (prompt instanceof Prompt.TurnRod turn) {
        boolean rare =
            turn.said().step().startsWith("pocket") || turn.said().step().contains("undo");
        Feel feel = random.nextInt(rare ? 2 : 4) == 0 ? feel(random) : usual;
        boolean still = feel == Feel.JAMMED;
        neck.gap -= still ? 0 : turn.turn().turns() * 4 * neck.response;
        play.turned(still ? 0 : turn.turn().turns(), feel);
      } else {
        play.ordinary();
      }
    }
    return play;
  }

  private static Feel feel(Random random) {
    return Feel.values()[random.nextInt(Feel.values().length)];
  }

  private static void read(
      Play play, Prompt.Measure measure, BenchNeck neck, boolean twisted, Random random) {
    if (random.nextInt(25) == 0) {
      play.give(new Answer.CannotMeasure());
    } else if (measure.which() == null) {
      play.give(new Answer.Value(25 + random.nextInt(50)));
    } else {
      double off = twisted && measure.which() == quarterturn.procedure.Which.HIGHEST ? 0.2 : 0;
      double slip = random.nextInt(8) == 0 ? 0.12 * random.nextGaussian() : 0;
      Bracket exact = BenchNeck.leaves(neck.gap + off + slip);
      boolean coarse = exact.bounded() && random.nextInt(4) == 0;
      double more = random.nextInt(3) == 0 ? 0.4 : 0.1;
      play.read(coarse ? new Bracket(exact.lowMm(), exact.highMm() + more) : exact);
    }
  }
}
