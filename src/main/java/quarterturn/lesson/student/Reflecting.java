package quarterturn.lesson.student;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Round;
import quarterturn.session.Answer;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;

/**
 * Asks one student what they make of a result beside the prediction, and a question about another
 * case.
 */
final class Reflecting implements Dialogue {
  private final LessonSession session;
  private final Gate.Reflect gate;
  private final Round round;
  private final Recurring recurring = new Recurring();
  private @Nullable String reason;

  Reflecting(LessonSession session, Gate.Reflect gate) {
    this.session = session;
    this.gate = gate;
    this.round = session.round(gate.round());
  }

  @Override
  public Question question() {
    List<String> lines = GateWords.beside(gate, round);
    String question = gate.question();
    return reason == null || question == null
        ? new Question.Words(
            "Compare",
            lines,
            gate.student() + ", what do you make of it?",
            "Your own words, one line. back: the reading was typed wrong.")
        : recurring.question("Think on", lines, lead(question) + question, gate.student());
  }

  private String lead(String question) {
    return switch (session.kind(question)) {
      case PREDICT -> "Once more, now that you know: ";
      case IDEA -> "Now another case: ";
      case CHECK -> "To check: ";
    };
  }

  @Override
  public Taken take(String text) throws RefusedException, IOException {
    if (text.equalsIgnoreCase("back")) {
      session.answer(new Answer.Correct());
      return Taken.briefly("The last answer is taken back.");
    }
    Boolean missed = false;
    if (reason == null) {
      reason = Recurring.words(text);
      missed = gate.question() == null ? missed : null;
    } else {
      missed = recurring.take(text);
    }
    if (missed == null) {
      return Taken.SILENTLY;
    }
    session.reflect(gate, reason, recurring.answer(), missed);
    return new Taken("", session.debrief(gate.round()));
  }

  @Override
  public boolean back() {
    if (recurring.back()) {
      return true;
    }
    boolean some = reason != null;
    reason = null;
    return some;
  }
}
