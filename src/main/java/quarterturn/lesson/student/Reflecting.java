package quarterturn.lesson.student;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Round;
import quarterturn.session.Answer;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;

/**
 * Shows what came beside what was predicted. After a turn one student types for all why it went
 * that way; after a reading each answers a question about another case.
 */
final class Reflecting implements Dialogue {
  private static final String BACK = " back: the last answer was typed wrong.";

  private final LessonSession session;
  private final Round round;
  private final @Nullable Choice choice;

  Reflecting(LessonSession session, Gate.Reflect gate) {
    this.session = session;
    this.round = gate.round();
    this.choice = gate.question() == null ? null : session.choice(gate.question());
  }

  private Rows rows() {
    List<String> here = session.lesson().students();
    return new Rows(here, session.round(round.n()).toReflect(here));
  }

  @Override
  public Question question() {
    List<String> lines = new ArrayList<>(GateWords.beside(round));
    if (choice == null) {
      String who = session.typist();
      return new Question.Words(
          "Compare",
          lines,
          (who.isEmpty() ? "" : who + " types for all: ") + "why that way?",
          "One line, in your own words." + BACK);
    }
    lines.addAll(choice.lines());
    lines.addAll(session.typing());
    Rows rows = rows();
    return new Question.Rows(
        "Think on", lines, choice.asks(), rows.example("a") + BACK, rows.shown(), "", true);
  }

  @Override
  public Taken take(String text) throws RefusedException, IOException {
    if (text.equalsIgnoreCase("back")) {
      session.answer(new Answer.Correct());
      return Taken.briefly("The last answer is taken back.");
    }
    if (choice == null) {
      String why = Choice.words(text);
      String typist = session.typist();
      for (String student : rows().missing()) {
        boolean typed = typist.isEmpty() || typist.equals(student);
        session.reflect(round, student, typed ? why : null);
      }
      return Taken.SILENTLY;
    }
    List<String> taken = new ArrayList<>();
    Rows rows = rows();
    for (Map.Entry<String, String> row : rows.read(text, choice::fits).entrySet()) {
      try {
        Choice.Made made = choice.made(row.getValue());
        session.reflect(round, row.getKey(), null, made.answer(), made.missed());
      } catch (NotUnderstoodException e) {
        throw rows.refused(taken, row.getKey(), e);
      }
      taken.add(row.getKey());
    }
    return Taken.briefly(String.join(", ", taken) + ": taken.");
  }
}
