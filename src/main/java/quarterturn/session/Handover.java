package quarterturn.session;

import java.util.List;

/**
 * What a session leaves to a repairer, and how it leaves the instrument.
 *
 * @param points what is left to a repairer, in the order in which it came up; empty where nothing
 *     is
 * @param stages the state of each result of a set-up; empty where it is not known
 * @param standing the state that the instrument is in
 */
public record Handover(List<Point> points, List<Stage> stages, String standing) {
  public Handover {
    points = List.copyOf(points);
    stages = List.copyOf(stages);
  }

  /**
   * An end that leaves something to a repairer.
   *
   * @param procedure id of the procedure that ended so
   * @param text what the end says
   */
  public record Point(String procedure, String outcome, String text) {}

  /** How to print what is left to a repairer. */
  public static String printed(String session, Program program) {
    return "A note for the repairer can be printed:\n"
        + program.typed("log export " + session + " --note");
  }
}
