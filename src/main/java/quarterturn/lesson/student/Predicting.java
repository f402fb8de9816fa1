package quarterturn.lesson.student;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import quarterturn.lesson.Round;
import quarterturn.session.Dialogue;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;

/** Asks one student to predict what is read or turned next. */
final class Predicting implements Dialogue {
  private final LessonSession session;
  private final Round round;
  private final NextStudent naming;
  private final Prompt coming;
  private Expecting expecting;
  private List<String> hint = List.of();

  Predicting(LessonSession session, Gate.Predict gate) {
    this.session = session;
    this.round = gate.round();
    this.naming = new NextStudent(gate.missing());
    this.coming = session.coming();
    this.expecting = begun();
  }

  private Expecting begun() {
    return ComingWords.expecting(coming, round, session.overview());
  }

  @Override
  public Question question() {
    List<String> lines = new ArrayList<>(ComingWords.of(coming, round, session.overview()));
    session.worked(false).forEach(line -> lines.add("Note: " + line));
    List<String> before = session.before();
    before.forEach(question -> lines.add("Think about it: " + question));
    lines.addAll(hint);
    if (naming.student() == null) {
      return naming.question("Predict first", lines, "Who predicts?");
    }
    return new Question.Words(
        "Predict first",
        lines,
        naming.student() + ": " + expecting.wanted(),
        "One line can say it all, for example: "
            + ComingWords.example(expecting)
            + ". help gives a hint; it then counts as made with help.",
        false,
        !before.isEmpty());
  }

  @Override
  public Taken take(String text) throws RefusedException, IOException {
    String student = naming.student();
    if (student == null) {
      naming.take(text);
    } else if (text.equalsIgnoreCase("help")) {
      expecting = expecting.withHelp();
      hint = ComingWords.help(coming, round, session.overview(), session.worked(true));
    } else {
      expecting = expecting.with(text);
      if (expecting.next() == null) {
        session.predict(round.n(), student, expecting.made());
        return Taken.briefly(student + ": locked.");
      }
    }
    return Taken.SILENTLY;
  }

  @Override
  public boolean back() {
    Expecting fresh = expecting.helped() ? begun().withHelp() : begun();
    if (!fresh.equals(expecting)) {
      expecting = fresh;
      return true;
    }
    return naming.back();
  }
}
