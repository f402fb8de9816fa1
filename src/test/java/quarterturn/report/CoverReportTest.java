package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Way;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.cover.Cover;
import quarterturn.rehearsal.cover.Covered;

/** What is said of a cover; the figures are invented. */
class CoverReportTest {
  private static final Way TAKEN = new Way("relief", "play", "clean", "end");

  @Test
  void countsAndNamesWhatWasNeverTaken() {
    Way way = new Way("relief", "finished", "play is open-only", "slotted-nut");
    Way other = new Way("buzz", "heard", "unheard", "leave-it");
    Way shut = new Way("relief", "come-in", "called by setup", "rod-place");
    Covered covered =
        new Covered(
            "relief",
            List.of(TAKEN),
            List.of(
                new Covered.Never(way, 12, null),
                new Covered.Never(other, 0, null),
                new Covered.Never(shut, 3, "setup does not call it in this job")),
            212,
            List.of("in-window"),
            List.of());
    assertThat(CoverReport.lines(covered))
        .containsExactly(
            "relief: 1 of 3 ways taken in 212 sessions.",
            "In the procedures it calls, 0 of 1 way; cover those by their names.",
            "never taken: finished -> slotted-nut (play is open-only): finished was reached",
            "  12 times",
            "can't be taken: come-in -> rod-place (called by setup): setup does not call it",
            "  in this job")
        .inOrder();
  }

  @Test
  void tellsOfASessionThatCouldNotGoOn() {
    Covered.Stuck stuck =
        new Covered.Stuck("astray", "It stands still.", List.of("relief/b", "relief/c"));
    Covered covered =
        new Covered("relief", List.of(TAKEN), List.of(), 1, List.of(), List.of(stuck));
    assertThat(CoverReport.lines(covered))
        .containsExactly(
            "relief: 1 of 1 way taken in 1 session.",
            "could not go on (astray): It stands still. Last steps: relief/b, relief/c")
        .inOrder();
  }

  @Test
  void staysWithinTheScreenInPlainLetters() throws Exception {
    Covered covered = Cover.of(new Shelf(null).load("setup"), 1, 5, Duration.ofMinutes(1));
    List<String> lines = CoverReport.lines(covered);
    assertThat(lines.size()).isGreaterThan(10);
    for (String line : lines) {
      assertThat(line.length()).isAtMost(80);
      assertThat(line).matches("[ -~]*");
    }
  }
}
