package quarterturn.rehearsal.cover;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.Library;
import quarterturn.procedure.Way;
import quarterturn.procedure.Ways;
import quarterturn.procedure.read.Shelf;

/** Simulated sessions take every way of the shipped procedures, and tell of those they can't. */
@Tag("slow")
class CoverTest {
  private static final Duration TIME = Duration.ofMinutes(2);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "intake",
        "strings",
        "nut-clearance",
        "action",
        "neck-angle",
        "intonation",
        "pickups",
        "ladder",
        "set-back",
        "buzz",
        "sign-off"
      })
  void everyWayIsTaken(String id) throws Exception {
    Library library = library(id);
    Covered covered = Cover.of(library, 3, 300, TIME);
    // What it calls is covered by itself.
    assertThat(covered.own().never()).isEmpty();
    assertThat(covered.taken()).containsAtLeastElementsIn(Ways.of(library.main()));
    assertThat(covered.outcomes()).isNotEmpty();
    assertThat(covered.stuck()).isEmpty();
  }

  @Test
  void everyWayOfReliefIsTakenButThoseWithinALargerJob() throws Exception {
    Covered covered = Cover.of(library("relief"), 4, 400, TIME);
    assertThat(covered.open()).isEmpty();
    assertThat(covered.never().stream().map(CoverTest::words).toList())
        .containsExactly(
            "prepare-unless -> tune: setup does not call it in this job; "
                + "season does not call it in this job",
            "as-left -> turned-or-not: setup does not call it in this job; "
                + "season does not call it in this job",
            "play-gate -> turned-or-not: setup does not call it in this job; "
                + "season does not call it in this job");
    assertThat(covered.outcomes())
        .containsAtLeast("jammed", "no-response", "wrong-way", "limit", "no-rod");
    assertThat(covered.stuck()).isEmpty();
  }

  @Test
  void everyWayOfASpringBridgeIsTakenButTheOneFromBeforeToAfter() throws Exception {
    Covered covered = Cover.of(library("spring-bridge"), 1, 300, TIME);
    assertThat(covered.open()).isEmpty();
    assertThat(covered.never().stream().map(CoverTest::words).toList())
        .containsExactly("held-before -> set-free: no way leads from hold to held-before");
    assertThat(covered.outcomes()).containsAtLeast("held", "balanced", "unbalanced");
    assertThat(covered.stuck()).isEmpty();
  }

  /**
   * What only a larger job leads to is taken within setup; all else of what it calls is taken by
   * itself.
   */
  @Test
  void everyWayOfSetupIsTakenButTheLastLocks() throws Exception {
    Covered covered = Cover.of(library("setup"), 4, 320, TIME);
    // A simulated neck that was refitted mostly has saddles in reach, so that it is seldom refitted
    // twice. Sign-off sends back twice at the most, so that it is never come to a fourth time.
    assertThat(
            covered.own().open().stream()
                .map(never -> never.way().toString())
                .filter(way -> !way.contains("too-often"))
                .toList())
        .containsExactly(
            "setup: sign-off-then -> paused (sign-off reached at least 4 times)",
            "setup: see-action -> paused (sign-off reached at least 4 times)");
    assertThat(covered.taken().stream().map(Way::toString).toList())
        .containsAtLeast(
            "relief: prepare-unless -> tune (called by setup or season)",
            "relief: as-left -> turned-or-not (called by setup or season)",
            "relief: play-gate -> turned-or-not (called by setup or season)",
            "spring-bridge: held-before -> set-free (hold is blocked or own-gap)");
    assertThat(covered.stuck()).isEmpty();
  }

  private static String words(Covered.Never never) {
    return never.way().step() + " -> " + never.way().to() + ": " + never.because();
  }

  @Test
  void listsExactlyTheBranchThatNobodyCanTake(@TempDir Path folder) throws Exception {
    // Invented.
    Path file = folder.resolve("knock.yaml");
    Files.writeString(
        file,
        """
        procedure: knock
        revision: 1
        title: Knock
        purpose: Find a knock (invented).
        tools:
          - ear
        begin: listen
        steps:
          - part: Listen
          - choose: listen
            text: Does it knock?
            options:
              - is: quiet
                label: No
                go: sort
              - is: knocks
                label: Yes
                go: end
          - compute: sort
            calculation: response
            branches:
              - when: listen is knocks
                go: end
              - otherwise: end
          - done: end
            text: That is all.
            outcome: heard
        """);
    Covered covered = Cover.of(library(file.toString()), 1, 4000, TIME);
    // Tried often enough, it is left.
    assertThat(covered.sessions()).isAtLeast(5);
    assertThat(covered.sessions()).isLessThan(100);
    assertThat(covered.never()).hasSize(1);
    Covered.Never never = covered.never().get(0);
    assertThat(never.way()).isEqualTo(new Way("knock", "sort", "listen is knocks", "end"));
    assertThat(never.because()).isNull();
    assertThat(never.reached()).isGreaterThan(0);
    assertThat(covered.taken()).contains(new Way("knock", "sort", "otherwise", "end"));
  }

  @Test
  void theSameSeedGivesTheSameResult() throws Exception {
    Covered one = Cover.of(library("relief"), 7, 60, TIME);
    Covered other = Cover.of(library("relief"), 7, 60, TIME);
    assertThat(other).isEqualTo(one);
    assertThat(Cover.of(library("relief"), 8, 60, TIME)).isNotEqualTo(one);
  }

  @Test
  void noSessionIsBegunWhenTheTimeIsUp() throws Exception {
    Covered covered = Cover.of(library("buzz"), 1, 10, Duration.ZERO);
    assertThat(covered.sessions()).isEqualTo(0);
    assertThat(covered.taken()).isEmpty();
  }

  @Test
  void everyWayOfSeasonItselfIsTaken() throws Exception {
    Library library = library("season");
    Covered covered = Cover.of(library, 1, 300, TIME);
    assertThat(covered.taken()).containsAtLeastElementsIn(Ways.of(library.main()));
    assertThat(covered.taken().stream().map(Way::toString).toList())
        .contains("relief: prepare-unless -> tune (called by setup or season)");
    assertThat(covered.stuck()).isEmpty();
  }

  private static Library library(String id) throws Exception {
    return new Shelf(null).load(id);
  }
}
