package quarterturn.lesson.teacher;

import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import quarterturn.lesson.Plan;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.store.Sessions;

/** The steps of a lesson's procedures at which a saddle is set. */
public final class SaddleSteps {
  private SaddleSteps() {}

  public static Set<String> of(Plan plan, Sessions sessions)
      throws IOException, UnreadableException {
    Set<String> out = new TreeSet<>();
    for (String procedure : plan.procedures()) {
      out.addAll(Roster.saddleSteps(sessions.library(procedure)));
    }
    return out;
  }
}
