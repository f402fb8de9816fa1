package quarterturn.lesson.student;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;

/**
 * How a bench stands: all that decides what is on view.
 *
 * @param here the students
 * @param prompt the session's, or null before it is known
 * @param worked the steps of the worked example
 */
record Stands(Gate gate, List<String> here, @Nullable Prompt prompt, List<String> worked) {
  static final Stands NOWHERE = new Stands(new Gate.Nobody(), List.of(), null, List.of());

  /** How a bench stands once it has taken the orders that came in. */
  static Stands of(LessonSession session) throws RefusedException, IOException {
    session.look();
    Gate gate = session.gate();
    List<String> here = session.lesson().students();
    return new Stands(gate, here, session.prompt(), session.worked(false));
  }

  /** Whether the same is asked of the same students. */
  boolean sameQuestions(Stands other) {
    return gate.goesOnFrom(other.gate) && here.equals(other.here);
  }

  /** Whether the bench has been stopped, or waits for the teacher. */
  boolean waits() {
    return gate instanceof Gate.Stopped || gate instanceof Gate.Held;
  }
}
