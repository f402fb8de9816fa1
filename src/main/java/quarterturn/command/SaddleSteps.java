package quarterturn.command;

import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import quarterturn.lesson.Plan;
import quarterturn.lesson.teacher.Roster;
import quarterturn.procedure.Unreadable;

/** The steps of a lesson's procedures at which a saddle is set. */
final class SaddleSteps {
  private SaddleSteps() {}

  static Set<String> of(Plan plan, Desk desk) throws IOException, Unreadable {
    Set<String> out = new TreeSet<>();
    for (String procedure : plan.procedures()) {
      out.addAll(Roster.saddleSteps(desk.library(procedure)));
    }
    return out;
  }
}
