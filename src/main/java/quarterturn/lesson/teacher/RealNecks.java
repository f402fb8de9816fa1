package quarterturn.lesson.teacher;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Limits;

/** What a teacher who plans a lesson on real necks has to plan for. */
public final class RealNecks {
  private RealNecks() {}

  /**
   * What fits into a day, when the necks are set back, and what earlier lessons have left.
   *
   * @param left the necks that still stand turned
   */
  public static List<String> plan(Limits limits, List<TurnedNeck> left) {
    double day = limits.beginnerDay().turns();
    int few = (int) Math.floor(day / limits.perReading().turns() + 1e-9);
    int many = (int) Math.floor(day / limits.firstMove().turns() + 1e-9);
    List<String> lines = new ArrayList<>();
    lines.add(
        "Real necks: "
            + limits.beginnerDay()
            + " a day for each, so "
            + few
            + " to "
            + many
            + " turns, then "
            + limits.restHours()
            + " hours of rest.");
    lines.add(
        "Plan to set them back after class. What the lesson turns counts for the day: where less is"
            + " left than that, set them back the next day.");
    for (TurnedNeck neck : left) {
      lines.add("Not set back yet: " + neck.bench() + ", " + neck.words() + ".");
    }
    return lines;
  }
}
