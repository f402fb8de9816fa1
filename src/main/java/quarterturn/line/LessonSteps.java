package quarterturn.line;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Round;
import quarterturn.lesson.Students;
import quarterturn.lesson.bench.ComingWords;
import quarterturn.lesson.bench.Expecting;
import quarterturn.lesson.bench.Gate;
import quarterturn.lesson.bench.GateWords;
import quarterturn.lesson.bench.LessonSession;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.session.Refused;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.NotUnderstood;
import quarterturn.unit.Printable;

/** Sees to what stands before a prompt, a student at a time and in the order they choose. */
final class LessonSteps {
  private final LessonSession session;
  private final LessonTalk talk;
  private final LineSource in;
  private final Paper paper;

  /** The last thing that was introduced, so that it is said once. */
  private String introduced = "";

  LessonSteps(LessonSession session, LessonTalk talk, LineSource in, Paper paper) {
    this.session = session;
    this.talk = talk;
    this.in = in;
    this.paper = paper;
  }

  void see(Gate gate) throws IOException, LineSource.Interrupted {
    try {
      if (gate instanceof Gate.Nobody) {
        nobody();
      } else if (gate instanceof Gate.Predict predict) {
        predict(predict);
      } else if (gate instanceof Gate.ReadBlind read) {
        read(read);
      } else if (gate instanceof Gate.Reflect reflect) {
        reflect(reflect);
      } else {
        waiting(gate);
      }
    } catch (Refused e) {
      // As when a stop came first: what keeps the bench is said next.
      paper.say("Not taken: " + e.getMessage());
    }
  }

  /** Whether this is said for the first time. */
  private boolean first(String what) {
    boolean first = !what.equals(introduced);
    introduced = what;
    return first;
  }

  private void nobody() throws Refused, IOException, LineSource.Interrupted {
    String typed =
        talk.line("Who is at this bench? > ", "Type the names, with commas between them.", false);
    if (typed == null) {
      return;
    }
    try {
      for (String student : Students.of(typed)) {
        session.come(student);
      }
    } catch (NotUnderstood e) {
      paper.say("Not taken: " + e.getMessage() + ".");
    }
  }

  private void waiting(Gate gate) throws IOException, LineSource.Interrupted {
    if (first("wait " + gate)) {
      paper.say("");
      paper.say(GateWords.waiting(gate).stream().map(Printable::of).toList());
    } else {
      paper.say("Still waiting for the teacher.");
    }
    if (in.typedByHand()) {
      talk.line("waiting; Enter looks again > ", "Enter: look again.", false);
      return;
    }
    Gate now = gate;
    while (now.equals(gate)) {
      in.pause(Duration.ofSeconds(1));
      try {
        session.look();
        now = session.gate();
      } catch (Refused e) {
        throw new IOException("the lesson could not go on: " + e.getMessage(), e);
      }
    }
    if (now.getClass() != gate.getClass()) {
      paper.say("The teacher lets this bench go on.");
    }
  }

  private void predict(Gate.Predict predict) throws Refused, IOException, LineSource.Interrupted {
    Prompt coming = session.coming();
    Round round = predict.round();
    if (first("predict " + round.n())) {
      paper.say("");
      paper.say(PromptLines.place(coming, session.overview()));
      paper.say(ComingWords.of(coming, round, session.overview()));
      session.worked(false).forEach(line -> paper.say("Note: " + line));
      think("Think about it first: ", session.before());
    }
    String student = talk.which(predict.missing(), "Who predicts?");
    if (student == null) {
      return;
    }
    Expecting expecting = ComingWords.expecting(coming, round, session.overview());
    while (expecting.next() != null) {
      String typed =
          talk.line(
              student + ": " + expecting.wanted() + " > ",
              "One line can say it all, for example: "
                  + ComingWords.example(expecting)
                  + ". help: a hint; the prediction then counts as made with help.",
              false);
      if (typed == null) {
        return;
      }
      if (typed.equalsIgnoreCase("help")) {
        expecting = expecting.withHelp();
        paper.say(ComingWords.help(coming, round, session.overview(), session.worked(true)));
        continue;
      }
      try {
        expecting = expecting.with(typed);
      } catch (NotUnderstood e) {
        paper.say("Not taken: " + e.getMessage());
      }
    }
    session.predict(round.n(), student, expecting.made());
    paper.say(student + ": locked.");
  }

  private void read(Gate.ReadBlind read) throws Refused, IOException, LineSource.Interrupted {
    Prompt coming = session.coming();
    if (first("read " + read.round())) {
      List<String> lines = new ArrayList<>();
      lines.add("");
      coming.said().hazards().forEach(hazard -> lines.add(PromptLines.reminder(hazard)));
      lines.add(coming.said().text());
      lines.addAll(PictureWords.of(coming, session.overview()));
      lines.add("Each of you reads alone. What is typed is not shown until all have read.");
      paper.say(lines);
    }
    String student = talk.which(read.missing(), "Who reads?");
    if (student == null) {
      return;
    }
    Bracket leaves = session.leaves(read.round(), student);
    if (leaves != null) {
      paper.say("Note: What the leaves show " + student + ": " + leaves.typed() + ".");
    }
    double step = coming instanceof Prompt.Measure measure ? measure.step() : 0.05;
    while (true) {
      String typed =
          talk.line(
              student + ", your reading > ",
              "For example 0.30 passes 0.35 lifts; or touches. If it can't be read, stop the bench.",
              session.lesson().students().size() > 1);
      if (typed == null) {
        return;
      }
      try {
        session.read(read.round(), student, BracketParser.parse(typed, step));
        paper.say(student + ": taken.");
        return;
      } catch (NotUnderstood e) {
        // The message may quote what others are not to see.
        paper.say("Not taken. Type for example 0.30 passes 0.35 lifts; or touches.");
      }
    }
  }

  private void reflect(Gate.Reflect reflect) throws Refused, IOException, LineSource.Interrupted {
    Round round = session.round(reflect.round());
    if (first("reflect " + reflect)) {
      paper.say("");
      paper.say(GateWords.beside(reflect, round).stream().map(Printable::of).toList());
    }
    String help = "Your own words, one line. back: the reading was typed wrong.";
    String reason = words(reflect.student() + ", what do you make of it? > ", help, true);
    if (reason == null) {
      return;
    }
    String answer = null;
    boolean missed = false;
    if (reflect.question() != null) {
      think(lead(reflect.question()), List.of(reflect.question()));
      answer = words(reflect.student() + " > ", help, true);
      Boolean again = answer == null ? null : returns();
      if (again == null) {
        return;
      }
      missed = again;
    }
    session.reflect(reflect, reason, answer, missed);
    List<String> told = session.debrief(reflect.round());
    if (!told.isEmpty()) {
      paper.say("");
      paper.say(told.stream().map(Printable::of).toList());
    }
  }

  private String lead(String question) {
    return switch (session.kind(question)) {
      case PREDICT -> "Once more, now that you know: ";
      case IDEA -> "Now another case: ";
      case CHECK -> "To check: ";
    };
  }

  /** Questions of earlier lessons; what speaks for each is told after its answer. */
  void again(String student, List<String> due) throws IOException, LineSource.Interrupted {
    paper.say(List.of("", student + ", this comes back from an earlier lesson before you go on."));
    for (String question : due) {
      think("", List.of(question));
      String answer = words(student + " > ", "Your own words, one line.", false);
      Boolean missed = answer == null ? null : returns();
      if (answer == null || missed == null) {
        return;
      }
      try {
        paper.say(session.askedAgain(student, question, answer, missed));
      } catch (Refused e) {
        paper.say("Not taken: " + e.getMessage());
      }
    }
  }

  private @Nullable Boolean returns() throws IOException, LineSource.Interrupted {
    while (true) {
      String typed =
          talk.line(
              "Shall this question come back next time? yes or no > ",
              "yes: it is asked again at the next lesson.",
              false);
      if (typed == null) {
        return null;
      }
      String word = typed.toLowerCase(Locale.ROOT);
      if (word.matches("y|yes|n|no")) {
        return word.startsWith("y");
      }
      paper.say("Type yes or no.");
    }
  }

  /** A line that is not empty; {@code back} takes the last answer of the session back. */
  private @Nullable String words(String asked, String help, boolean back)
      throws IOException, LineSource.Interrupted {
    while (true) {
      String typed = talk.line(asked, help, false);
      if (typed == null) {
        return null;
      }
      if (back && typed.equalsIgnoreCase("back")) {
        back();
        return null;
      }
      String said = Printable.of(typed);
      if (!said.isBlank() && said.length() <= 300) {
        return said;
      }
      paper.say("A few words, please; at most 300 characters.");
    }
  }

  private void back() throws IOException {
    try {
      session.answer(new Answer.Correct());
      paper.say("The last answer is taken back.");
    } catch (Refused e) {
      paper.say("Not taken: " + e.getMessage());
    }
  }

  /** Says questions and gives everybody time to think before anybody answers. */
  private void think(String lead, List<String> questions) throws LineSource.Interrupted {
    if (questions.isEmpty()) {
      return;
    }
    questions.forEach(question -> paper.say(lead + Printable.of(question)));
    paper.say("(A moment to think: " + Gate.QUESTION_PAUSE.toSeconds() + " seconds.)");
    in.pause(Gate.QUESTION_PAUSE);
  }
}
