package quarterturn.lesson.student;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;

/**
 * A question that those at a bench bring up themselves, which comes before all else.
 *
 * @param asked makes it
 * @param stops whether it is the one that stops the bench
 * @param answered what its answer does
 */
record Asking(Asked asked, boolean stops, Answered answered) {
  /** Makes a question, with lines on what keeps the bench before its own. */
  interface Asked {
    Question with(List<String> kept);
  }

  /** Does what an answer asks for. */
  interface Answered {
    void with(String answer) throws RefusedException, IOException;
  }

  /** Whether to leave the bench. */
  static Asking whetherToLeave(LessonSession session, Runnable leave) {
    return new Asking(
        kept ->
            Question.Choose.sure(
                "Leave now?", leaving(session, kept), "Type yes to leave", "Anything else stays."),
        false,
        answer -> {
          if (answer.toLowerCase(Locale.ROOT).matches("y|yes|quit")) {
            leave.run();
          }
        });
  }

  private static List<String> leaving(LessonSession session, List<String> kept) {
    List<String> parting = session.overview().parting();
    List<String> lines = new ArrayList<>(kept);
    if (!parting.isEmpty()) {
      lines.add("Before you leave: " + String.join(" ", parting));
    }
    lines.add("If you leave now: " + session.standing() + ".");
    return lines;
  }

  /** Why the bench is to be stopped; the answer stops it. */
  static Asking whyToStop(LessonSession session) {
    return new Asking(Asking::stopping, true, session::stop);
  }

  private static Question stopping(List<String> kept) {
    List<String> lines = new ArrayList<>(kept);
    lines.add(
        "To stop is always right. Take your hands off the truss rod nut and leave everything as it"
            + " is. The teacher sees the reason, and nobody's name.");
    return new Question.Words(
        "Stop this bench",
        lines,
        "Why? It may stay empty. Enter stops the bench.",
        "Enter stops the bench.");
  }
}
