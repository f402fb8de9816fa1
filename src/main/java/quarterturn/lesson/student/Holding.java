package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;

/**
 * A dialogue that asks nothing: the prompt is open, the teacher is waited for, or the lesson is
 * over.
 *
 * @param unveiled what a simulated neck really was, to be told once the lesson is over
 */
record Holding(Gate gate, List<String> unveiled) implements Dialogue {
  @Override
  public @Nullable Question question() {
    if (gate instanceof Gate.Over) {
      List<String> lines = new ArrayList<>();
      lines.add("The teacher has ended the lesson. Leave everything in order.");
      lines.addAll(unveiled);
      return new Question.Show("The lesson is over", lines, "Press Enter to close.");
    }
    List<String> lines = GateWords.waiting(gate);
    String title = gate instanceof Gate.Stopped ? "Stopped" : "Wait for the teacher";
    return lines.isEmpty() ? null : new Question.Hold(title, lines);
  }

  @Override
  public Taken take(String text) {
    return Taken.SILENTLY;
  }
}
