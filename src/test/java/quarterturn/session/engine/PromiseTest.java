package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import quarterturn.Draws;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** The promises that hold for any answers whatever, legal or not. */
@Tag("slow")
class PromiseTest {
  private static final int SESSIONS = Draws.of(1000);

  @Test
  void noAnswersLeadToAnUnsafeTurn() throws Exception {
    Library library = Play.relief();
    int turns = IntStream.range(0, SESSIONS).parallel().map(seed -> turns(library, seed)).sum();
    // The promise is about turns, so there must have been many.
    assertThat(turns).isAtLeast(SESSIONS);
  }

  private static int turns(Library library, int seed) {
    try {
      return new Watched(library, new Random(seed)).run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A session of random answers with somebody looking at every prompt. */
  private static final class Watched {
    private final Random random;
    private final Play play;
    private final List<String> cautioned = new ArrayList<>();
    private boolean retuned;
    private boolean settled;
    private boolean read;
    private Instant readAt = Instant.MIN;
    private boolean offered;
    private int turns;
    private double gap;
    private final double response;

    Watched(Library library, Random random) throws IOException {
      this.random = random;
      this.gap = -0.3 + 1.5 * random.nextDouble();
      this.response = random.nextInt(4) == 0 ? 0 : 0.3 * random.nextDouble();
      Role role = Role.values()[random.nextInt(2)];
      this.play = Play.of(library, role, "bass-34", Style.values()[random.nextInt(3)]);
    }

    int run() throws IOException {
      for (int i = 0; i < 150 && !play.prompt().ended(); i++) {
        look(play.prompt());
        if (random.nextInt(60) == 0) {
          play.resumeAfter(Duration.ofMinutes(random.nextInt(3000)));
          offered = false;
          continue;
        }
        Prompt before = play.prompt();
        Answer answer = random.nextInt(6) == 0 ? anything() : fitting(before);
        if (random.nextInt(3) == 0) {
          forward();
        }
        try {
          play.bench.answer(answer);
          note(before, answer);
        } catch (RefusedException refused) {
          assertThat(refused.getMessage()).isNotEmpty();
          assertThat(play.prompt()).isEqualTo(before);
        }
      }
      return turns;
    }

    private void look(Prompt prompt) {
      if (!(prompt instanceof Prompt.TurnRod turn)) {
        offered = false;
        return;
      }
      assertThat(turn.turn().size().turns()).isAtMost(0.25);
      assertThat(turn.turn().turns()).isNotEqualTo(0.0);
      Turn net = play.state().history().net();
      assertThat(net.plus(turn.turn()).size().turns())
          .isAtMost(Math.max(1.0, net.size().turns()) + 1e-9);
      assertThat(cautioned).containsAtLeast("tool-slip", "rod-force", "wrong-key");
      if (!offered) {
        assertWithMessage("%s", play.events).that(read).isTrue();
        assertWithMessage("%s", play.events).that(turns == 0 || (retuned && settled)).isTrue();
        Instant last = play.events.get(play.events.size() - 1).at();
        assertThat(Duration.between(readAt, last)).isAtMost(Duration.ofMinutes(120));
      }
      offered = true;
    }

    /** What the record says has happened, kept apart from the engine's own book-keeping. */
    private void note(Prompt before, Answer answer) {
      String step = before.said().step();
      if (before instanceof Prompt.Caution caution) {
        caution.hazards().forEach(hazard -> cautioned.add(hazard.id()));
      } else if (before instanceof Prompt.TurnRod && answer instanceof Answer.Correct) {
        // It may have been made, so what was read before it says nothing any more.
        read = false;
      } else if (answer instanceof Answer.Turned turned) {
        turns++;
        gap -= turned.turn().turns() * 4 * response;
        retuned = false;
        settled = false;
        read = false;
      } else if (before instanceof Prompt.Choose && answer instanceof Answer.Chose chose) {
        boolean recalledAsMade =
            step.equals(EngineQuestions.RECALL) && !chose.option().equals(Recall.NOT_MADE.word());
        read &= !recalledAsMade;
        retuned &= !recalledAsMade;
        settled &= !recalledAsMade;
      } else if (before instanceof Prompt.Tell && step.matches("tune|retune|tune-again")) {
        retuned |= answer instanceof Answer.Confirmed;
      } else if (before instanceof Prompt.Wait && answer instanceof Answer.Waited) {
        settled = true;
      } else if (before instanceof Prompt.Measure m && m.quantity().bracket()) {
        read |= answer instanceof Answer.Measured;
        readAt = answer instanceof Answer.Measured ? play.bench.now() : readAt;
      }
    }

    private void forward() {
      try {
        int most = random.nextInt(12) == 0 ? 1500 : 20;
        play.bench.setClock(play.bench.now().plus(Duration.ofMinutes(random.nextInt(most))));
      } catch (RefusedException e) {
        throw new AssertionError(e);
      }
    }

    private Answer fitting(Prompt prompt) {
      if (prompt instanceof Prompt.Choose choose) {
        boolean first = random.nextInt(25) > 0;
        int option = first ? 0 : random.nextInt(choose.options().size());
        return new Answer.Chose(choose.options().get(option).id());
      } else if (prompt instanceof Prompt.Measure measure) {
        return measure.quantity().bracket()
            ? new Answer.Measured(BenchNeck.leaves(Math.min(gap, 2.5)))
            : new Answer.Value(40 + random.nextInt(21));
      } else if (prompt instanceof Prompt.TurnRod turn) {
        return new Answer.Turned(turn.turn(), random.nextInt(8) == 0 ? feel() : Feel.SMOOTH);
      } else if (prompt instanceof Prompt.Wait wait) {
        try {
          play.bench.setClock(
              play.bench.now().isAfter(wait.until()) ? play.bench.now() : wait.until());
        } catch (RefusedException e) {
          throw new AssertionError(e);
        }
        return new Answer.Waited(null);
      }
      return prompt instanceof Prompt.Write ? new Answer.Wrote("-") : new Answer.Confirmed();
    }

    private Answer anything() {
      return switch (random.nextInt(9)) {
        case 0 -> new Answer.Confirmed();
        case 1 -> new Answer.Chose(random.nextBoolean() ? "none" : "fits");
        case 2 -> reading();
        case 3 -> new Answer.Value(random.nextGaussian() * 100);
        case 4 -> new Answer.CannotMeasure();
        case 5 -> new Answer.Turned(new Turn(random.nextGaussian() * 0.3), feel());
        case 6 -> new Answer.Undo();
        case 7 -> new Answer.Waited(random.nextBoolean() ? "in a hurry" : null);
        default -> new Answer.Correct();
      };
    }

    private Feel feel() {
      return Feel.values()[random.nextInt(Feel.values().length)];
    }

    private Answer reading() {
      double low = random.nextInt(30) * 0.05;
      return new Answer.Measured(
          random.nextInt(6) == 0 ? Bracket.touches() : new Bracket(low, low + 0.05));
    }
  }
}
