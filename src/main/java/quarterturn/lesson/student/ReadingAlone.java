package quarterturn.lesson.student;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import quarterturn.lesson.Students;
import quarterturn.procedure.Hazard;
import quarterturn.session.Dialogue;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.NotUnderstoodException;

/** Asks one student for a reading, which the others do not see until all have read. */
final class ReadingAlone implements Dialogue {
  private static final String EXAMPLE = "0.30 passes 0.35 lifts; or touches.";

  private final LessonSession session;
  private final int round;
  private final List<String> missing;
  private final Prompt coming;
  private String student;

  ReadingAlone(LessonSession session, Gate.ReadBlind gate) {
    this.session = session;
    this.round = gate.round();
    this.missing = gate.missing();
    this.student = missing.get(0);
    this.coming = session.coming();
  }

  @Override
  public Question question() {
    List<String> lines = new ArrayList<>();
    for (Hazard hazard : coming.said().hazards()) {
      lines.add(hazard.word() + ": " + hazard.avoid());
    }
    lines.add(coming.said().text());
    if (coming instanceof Prompt.Measure measure) {
      lines.add("Read " + ComingWords.reading(measure) + ".");
    }
    lines.add("Each of you reads alone; nobody sees what the others read until all have.");
    Bracket leaves = session.leaves(round, student);
    if (leaves != null) {
      lines.add("What the gauges show " + student + ": " + leaves.typed() + ".");
    }
    return new Question.Number(
        "Read alone",
        lines,
        student + ", your reading",
        "For example "
            + EXAMPLE
            + (missing.size() > 1 ? " Who reads instead types their name first." : "")
            + " If it can't be read, stop the bench.",
        coming instanceof Prompt.Measure measure ? measure.quantity().unit() : "",
        session.lesson().students().size() > 1);
  }

  @Override
  public Taken take(String text) throws RefusedException, IOException {
    String named = Students.match(text, missing);
    if (named != null) {
      student = named;
      return Taken.SILENTLY;
    }
    double step = coming instanceof Prompt.Measure measure ? measure.step() : 0.05;
    Bracket bracket;
    try {
      bracket = BracketParser.parse(text, step);
    } catch (NotUnderstoodException e) {
      // Its message may quote what the others are not to see.
      throw new NotUnderstoodException("Type for example " + EXAMPLE);
    }
    session.read(round, student, bracket);
    return Taken.briefly(student + ": taken.");
  }
}
