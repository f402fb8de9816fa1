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
   * How many ways were taken, of the procedure and of those it calls; then its own ways that were
   * never taken and may be closed, those that can't be taken, and the sessions that could not go
   * on. At most 80 columns wide.
   */
  public static List<String> lines(Covered covered) {
    List<String> lines = new ArrayList<>();
    Covered own = covered.own();
    lines.add(
        covered.procedure()
            + ": "
            + taken(own)
            + " taken in "
            + Counted.of(covered.sessions(), "session")
            + ".");
    if (own.ways() < covered.ways()) {
      Covered called = covered.called();
      add(lines, "In the procedures it calls, " + taken(called) + "; cover those by their names.");
    }
    List<Covered.Never> behind = new ArrayList<>();
    for (Covered.Never never : own.open()) {
      String name = name(never.way(), covered.procedure());
      add(lines, "never taken: " + name + ": " + never.way().step() + " was " + reached(never));
    }
    for (Covered.Never never : own.never()) {
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

  private static String taken(Covered covered) {
    return covered.taken().size() + " of " + Counted.of(covered.ways(), "way");
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
