package quarterturn.lesson.student;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;

/**
 * A dialogue that asks nothing: the prompt is open, the teacher is waited for, or the lesson is
 * over.
 */
record Holding(Gate gate) implements Dialogue {
  @Override
  public @Nullable Question question() {
    if (gate instanceof Gate.Over) {
      return new Question.Show(
          "The lesson is over",
          List.of("The teacher has ended the lesson. Leave everything in order."),
          "Press Enter to close.");
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
