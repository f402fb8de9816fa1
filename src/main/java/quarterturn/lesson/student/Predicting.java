package quarterturn.lesson.student;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Round;
import quarterturn.session.Dialogue;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;

/** Asks each student to predict which way the rod will be turned, or what will be read. */
final class Predicting implements Dialogue {
  private final LessonSession session;
  private final Round round;
  private final Prompt coming;
  private final Expecting expecting;
  private List<String> hint = List.of();

  Predicting(LessonSession session, Gate.Predict gate) {
    this.session = session;
    this.round = gate.round();
    this.coming = session.coming();
    this.expecting = ComingWords.expecting(coming, round, session.plausible());
  }

  private Rows rows() {
    List<String> here = session.lesson().students();
    return new Rows(here, session.round(round.n()).toPredict(here));
  }

  @Override
  public Question question() {
    List<String> lines = new ArrayList<>(ComingWords.of(coming, round, session.overview()));
    session.worked(false).forEach(line -> lines.add("Note: " + line));
    List<String> before = session.before();
    before.forEach(question -> lines.add("Think about it: " + question));
    lines.addAll(session.typing());
    lines.addAll(hint);
    Rows rows = rows();
    return new Question.Rows(
        "Predict first",
        lines,
        expecting.asks(),
        rows.example(expecting.example())
            + " A reason may follow. help gives a hint; it then counts as made with help.",
        rows.shown(),
        expecting.unit(),
        !before.isEmpty());
  }

  @Override
  public Taken take(String text) throws RefusedException, IOException {
    if (text.equalsIgnoreCase("help")) {
      hint = ComingWords.help(coming, round, session.worked(true));
      return Taken.SILENTLY;
    }
    List<String> locked = new ArrayList<>();
    Rows rows = rows();
    for (Map.Entry<String, String> row : rows.read(text, expecting::fits).entrySet()) {
      try {
        Prediction made = expecting.made(row.getValue(), !hint.isEmpty());
        session.predict(round.n(), row.getKey(), made);
      } catch (NotUnderstoodException e) {
        throw rows.refused(locked, row.getKey(), e);
      }
      locked.add(row.getKey());
    }
    return Taken.briefly(String.join(", ", locked) + ": locked.");
  }
}
