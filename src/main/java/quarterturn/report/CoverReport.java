package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Way;
import quarterturn.rehearsal.cover.Covered;
import quarterturn.unit.Counted;

/** The result of simulated sessions of a procedure, as text. */
public final class CoverReport {
  private static final int WIDTH = 80;
  private static final int HANG = 2;

  private CoverReport() {}

  /**
   * How many ways were taken; then the ways that were never taken and may be closed, those that
   * can't be taken, and the sessions that could not go on. At most 80 columns wide.
   */
  public static List<String> lines(Covered covered) {
    List<String> lines = new ArrayList<>();
    int ways = covered.taken().size() + covered.never().size();
    lines.add(
        covered.procedure()
            + ": "
            + covered.taken().size()
            + " of "
            + Counted.of(ways, "way")
            + " taken in "
            + Counted.of(covered.sessions(), "session")
            + ".");
    List<Covered.Never> behind = new ArrayList<>();
    for (Covered.Never never : covered.never()) {
      if (never.because() == null) {
        String name = name(never.way(), covered.procedure());
        add(lines, "never taken: " + name + ": " + never.way().step() + " was " + reached(never));
      }
    }
    for (Covered.Never never : covered.never()) {
      if (never.behind()) {
        behind.add(never);
      } else if (never.because() != null) {
        add(
            lines,
            "can't be taken: " + name(never.way(), covered.procedure()) + ": " + never.because());
      }
    }
    if (!behind.isEmpty()) {
      String first = name(behind.get(0).way(), covered.procedure());
      add(
          lines,
          "nor can "
              + Counted.of(behind.size(), "way")
              + " whose steps only such ways lead to; the first is "
              + first);
    }
    for (Covered.Stuck stuck : covered.stuck()) {
      String last = String.join(", ", stuck.last());
      add(
          lines,
          "could not go on (" + stuck.outcome() + "): " + stuck.why() + " Last steps: " + last);
    }
    return lines;
  }

  private static void add(List<String> lines, String text) {
    lines.addAll(Paragraph.wrap(text, WIDTH, HANG));
  }

  /**
   * A way in words, "finished -> slotted-nut (play-test is open-only)", with its procedure where
   * that is a called one.
   */
  private static String name(Way way, String main) {
    String whole = way.toString();
    return way.procedure().equals(main) ? whole.substring(main.length() + 2) : whole;
  }

  private static String reached(Covered.Never never) {
    return never.reached() == 0
        ? "never reached"
        : "reached " + Counted.of(never.reached(), "time");
  }
}
