package quarterturn.rehearsal;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.check.Checker;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.Event;
import quarterturn.session.Prompt;

/** Procedures that come with the program work under a user's own limits that are stricter. */
class OwnLimitsTest {
  private static final double SLACK = 1e-9;

  @TempDir Path own;

  private Library library(String procedure, String limits) throws Exception {
    Path safety = Files.createDirectories(own.resolve("safety"));
    Files.writeString(safety.resolve("limits.yaml"), "limits:\n" + limits);
    return Checker.proven(new Shelf(own), procedure);
  }

  /**
   * The sheet as shipped, as the user's own, but that each turn that felt stiff ends there, and the
   * note on a stiff nut is told where it felt free, so that a step still leads to it.
   */
  private void stiffEnds(String sheet) throws IOException {
    String name = "procedures/" + sheet + ".yaml";
    String shipped = Files.readString(Path.of(name));
    Pattern felt = Pattern.compile("stiff: [a-z-]+");
    assertThat(felt.matcher(shipped).find()).isTrue();
    Path file = own.resolve(name);
    Files.createDirectories(Objects.requireNonNull(file.getParent()));
    Files.writeString(
        file,
        felt.matcher(shipped)
            .replaceAll("stiff: no-response")
            .replace(
                "turn\n  - tell: pocket-refit",
                "turn\n    felt: {stiff: no-response}\n  - tell: pocket-refit")
            .replace("free: free-note", "free: stiff-note")
            .replace("    expects: rod felt stiff\n", "")
            .replace("    go: key-out\n", ""));
  }

  private static PracticeBench played(NamedNeck neck, Library library, double most)
      throws Exception {
    PracticeBench bench = Practising.on(neck, library, "electric-25", Role.BEGINNER);
    for (int i = 0; i < 1500 && !bench.prompt().ended(); i++) {
      if (bench.prompt() instanceof Prompt.TurnRod turn) {
        assertThat(turn.turn().size().turns()).isAtMost(most + SLACK);
        assertThat(turn.limit()).isAtMost(library.limits().perReading());
      }
      bench.answer(bench.truth());
    }
    assertWithMessage("%s", bench.prompt()).that(bench.prompt().ended()).isTrue();
    return bench;
  }

  private static String outcome(PracticeBench bench) {
    return bench.prompt() instanceof Prompt.Done done
        ? done.outcome()
        : bench.prompt() instanceof Prompt.HandOver over ? over.outcome() : "";
  }

  @ParameterizedTest
  @ValueSource(strings = {"relief", "season", "setup"})
  void aSixteenthAtMost(String procedure) throws Exception {
    Library library = library(procedure, "  per-reading: 1/16 turn\n");
    PracticeBench bench = played(NamedNeck.TOO_MUCH, library, 1 / 16.0);
    assertThat(bench.neck().moves()).isAtLeast(4);
    assertThat(outcome(bench)).isAnyOf("in-window", "adjusted", "signed-off");
  }

  @Test
  void aNeckThatAnswersTheOtherWayIsFoundWithSixteenthsToo() throws Exception {
    Library library = library("relief", "  per-reading: 1/16 turn\n");
    assertThat(outcome(played(NamedNeck.REVERSED, library, 1 / 16.0))).isEqualTo("wrong-way");
    assertThat(outcome(played(NamedNeck.DEAD, library, 1 / 16.0))).isEqualTo("no-response");
  }

  @Test
  void aShorterDayAndALongerRest() throws Exception {
    Library library = library("relief", "  beginner-day: 1/8 turn\n  rest: 48 h\n");
    List<Event> events = played(NamedNeck.TOO_MUCH, library, 1 / 8.0).events();
    List<Instant> turns =
        events.stream().filter(e -> e instanceof Event.Turned).map(Event::at).toList();
    assertThat(turns.size()).isAtLeast(2);
    for (int i = 1; i < turns.size(); i++) {
      assertThat(Duration.between(turns.get(i - 1), turns.get(i))).isAtLeast(Duration.ofHours(48));
    }
  }

  @Test
  void aLongerSettlingThatATuningHasToOutlast() throws Exception {
    Library library = library("relief", "  settle: 40 min\n  reading-holds: 45 min\n");
    assertThat(outcome(played(NamedNeck.TOO_MUCH, library, 1 / 4.0))).isEqualTo("in-window");
    library = library("relief", "  settle: 10 min\n  reading-holds: 20 min\n");
    assertThat(outcome(played(NamedNeck.DEAD, library, 1 / 4.0))).isEqualTo("no-response");
  }

  /** Its turns, in relief and its block, must lead on from no feel that stops. */
  @Test
  void moreFeelsThatStop() throws Exception {
    String limits = "  stop-feels: [jammed, noise, slipped, stiff]\n";
    UnreadableException e =
        assertThrows(UnreadableException.class, () -> library("relief", limits));
    assertThat(e).hasMessageThat().contains("turn-after-stop: turn-rod turns the rod");
    for (String sheet : List.of("relief", "blocks/one-turn", "blocks/pocket-turn")) {
      stiffEnds(sheet);
    }
    Library library = library("relief", limits);
    PracticeBench bench = played(NamedNeck.STIFF, library, 1 / 4.0);
    assertThat(bench.prompt()).isInstanceOf(Prompt.HandOver.class);
    assertThat(bench.neck().moves()).isEqualTo(1);
    assertThat(library.limits().stopFeels())
        .isEqualTo(EnumSet.complementOf(EnumSet.of(Feel.SMOOTH, Feel.FREE)));
  }

  @Test
  void oneMoveWithoutAnAnswer() throws Exception {
    String limits = "  moves-without-answer: 1\n  wrong-way-moves: 1\n  moves-while-touching: 2\n";
    Library library = library("relief", limits);
    assertThat(outcome(played(NamedNeck.DEAD, library, 1 / 4.0))).isEqualTo("no-response");
    assertThat(outcome(played(NamedNeck.REVERSED, library, 1 / 4.0))).isEqualTo("wrong-way");
    assertThat(outcome(played(NamedNeck.TOO_MUCH, library, 1 / 4.0))).isEqualTo("in-window");
  }
}
