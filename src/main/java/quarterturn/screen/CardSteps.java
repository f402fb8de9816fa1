package quarterturn.screen;

import java.io.IOException;
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
import quarterturn.procedure.Hazard;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.session.Refused;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.NotUnderstood;
import quarterturn.unit.Printable;

/** The questions of one gate, one line after the other. */
abstract class CardSteps {
  private static final int LONGEST = 300;

  final LessonSession session;

  CardSteps(LessonSession session) {
    this.session = session;
  }

  /** The card now, or null where nothing comes first. */
  abstract @Nullable Card card();

  /** Takes a line; what is to be told afterwards. */
  abstract List<String> answered(String text) throws Refused, IOException;

  /** One question back; false where there is none. */
  boolean back() {
    return false;
  }

  /** What the last card was about. */
  String title() {
    return "All have answered";
  }

  /** These after others, which may be null. */
  CardSteps first(@Nullable CardSteps before) {
    return before == null ? this : before;
  }

  static CardSteps at(LessonSession session, Gate gate) {
    if (gate instanceof Gate.Predict predict) {
      return new Predicts(session, predict);
    } else if (gate instanceof Gate.ReadBlind read) {
      return new Reads(session, read);
    } else if (gate instanceof Gate.Reflect reflect) {
      return new Reflects(session, reflect);
    } else if (gate instanceof Gate.Nobody || session.lesson().students().isEmpty()) {
      return new Comes(session);
    }
    return new Waits(session, gate);
  }

  /** Questions of earlier lessons, or null where none is due. */
  static @Nullable CardSteps due(LessonSession session, String student) {
    return session.due(student).isEmpty() ? null : new Again(session, student);
  }

  /** A question, and once it is answered, whether it is to come back. */
  private static Card question(
      String title, List<String> lines, String student, @Nullable String answer) {
    return answer == null
        ? Card.question(title, lines, student + ", your answer", "Your own words, one line.")
        : Card.asked(
            title,
            lines,
            "Shall this question come back next time? yes or no",
            "yes: it is asked again at the next lesson.");
  }

  private static String said(String text) {
    String safe = Printable.of(text).strip();
    if (safe.isEmpty() || safe.length() > LONGEST) {
      throw new NotUnderstood("A few words, please.");
    }
    return safe;
  }

  private static boolean yes(String text) {
    String word = text.toLowerCase(Locale.ROOT);
    if (!word.matches("y|yes|n|no")) {
      throw new NotUnderstood("Type yes or no.");
    }
    return word.startsWith("y");
  }

  private static String one(String typed, List<String> names) {
    String found = Students.match(typed, names);
    if (found == null) {
      throw new NotUnderstood("Type a name, or its beginning: " + String.join(", ", names) + ".");
    }
    return found;
  }

  /** Nothing is asked: the prompt is open, or the teacher is waited for. */
  private static final class Waits extends CardSteps {
    private final Gate gate;

    Waits(LessonSession session, Gate gate) {
      super(session);
      this.gate = gate;
    }

    @Override
    @Nullable Card card() {
      if (gate instanceof Gate.Over) {
        return new Card(
            "The lesson is over",
            List.of("The teacher has ended the lesson. Leave everything in order."),
            null,
            false,
            "Press Enter to close.",
            false);
      }
      List<String> lines = GateWords.waiting(gate);
      String title = gate instanceof Gate.Stopped ? "Stopped" : "Wait for the teacher";
      return lines.isEmpty() ? null : Card.waiting(title, lines);
    }

    @Override
    List<String> answered(String text) {
      return List.of();
    }
  }

  private static final class Comes extends CardSteps {
    Comes(LessonSession session) {
      super(session);
    }

    @Override
    Card card() {
      return Card.asked(
          "Welcome",
          session.plan().students().isEmpty()
              ? List.of("The lesson: " + session.plan().title() + ".")
              : List.of("Expected: " + String.join(", ", session.plan().students()) + "."),
          "Who is at this bench?",
          "Type the names you choose, with commas between them.");
    }

    @Override
    List<String> answered(String text) throws Refused, IOException {
      for (String student : Students.of(text)) {
        session.come(student);
      }
      return List.of();
    }
  }

  private static final class Predicts extends CardSteps {
    private final Round round;
    private final List<String> missing;
    private final Prompt coming;
    private @Nullable String student;
    private Expecting expecting;
    private List<String> hint = List.of();

    Predicts(LessonSession session, Gate.Predict gate) {
      super(session);
      this.round = gate.round();
      this.missing = gate.missing();
      this.coming = session.coming();
      this.student = missing.size() == 1 ? missing.get(0) : null;
      this.expecting = ComingWords.expecting(coming, round, session.overview());
    }

    @Override
    Card card() {
      List<String> lines = new ArrayList<>(ComingWords.of(coming, round, session.overview()));
      session.worked(false).forEach(line -> lines.add("Note: " + line));
      List<String> before = session.before();
      before.forEach(question -> lines.add("Think about it: " + question));
      lines.addAll(hint);
      String help =
          "One line can say it all, for example: "
              + ComingWords.example(expecting)
              + ". help gives a hint; it then counts as made with help.";
      String asks =
          student == null
              ? "Who predicts? " + String.join(", ", missing)
              : student + ": " + expecting.wanted();
      boolean question = student != null && !before.isEmpty();
      return new Card("Predict first", lines, asks, false, help, question);
    }

    @Override
    List<String> answered(String text) throws Refused, IOException {
      if (student == null) {
        student = one(text, missing);
      } else if (text.equalsIgnoreCase("help")) {
        expecting = expecting.withHelp();
        hint = ComingWords.help(coming, round, session.overview(), session.worked(true));
      } else {
        expecting = expecting.with(text);
        if (expecting.next() == null) {
          session.predict(round.n(), student, expecting.made());
        }
      }
      return List.of();
    }

    @Override
    boolean back() {
      Expecting begun = ComingWords.expecting(coming, round, session.overview());
      Expecting fresh = expecting.helped() ? begun.withHelp() : begun;
      if (!fresh.equals(expecting)) {
        expecting = fresh;
        return true;
      }
      boolean chosen = student != null && missing.size() > 1;
      student = chosen ? null : student;
      return chosen;
    }
  }

  private static final class Reads extends CardSteps {
    private final int round;
    private final List<String> missing;
    private final Prompt coming;
    private @Nullable String student;

    Reads(LessonSession session, Gate.ReadBlind gate) {
      super(session);
      this.round = gate.round();
      this.missing = gate.missing();
      this.coming = session.coming();
      this.student = missing.size() == 1 ? missing.get(0) : null;
    }

    @Override
    Card card() {
      List<String> lines = new ArrayList<>();
      for (Hazard hazard : coming.said().hazards()) {
        lines.add(hazard.word() + ": " + hazard.avoid());
      }
      lines.add(coming.said().text());
      Bracket leaves = student == null ? null : session.leaves(round, student);
      if (leaves != null) {
        lines.add("What the leaves show " + student + ": " + leaves.typed() + ".");
      }
      lines.add("Each of you reads alone; nobody sees what the others read until all have.");
      Card card =
          Card.asked(
              "Read alone",
              lines,
              student == null
                  ? "Who reads? " + String.join(", ", missing)
                  : student + ", your reading",
              "For example 0.30 passes 0.35 lifts; or touches.");
      return student == null || session.lesson().students().size() < 2 ? card : card.unseen();
    }

    @Override
    List<String> answered(String text) throws Refused, IOException {
      if (student == null) {
        student = one(text, missing);
        return List.of();
      }
      double step = coming instanceof Prompt.Measure measure ? measure.step() : 0.05;
      Bracket bracket;
      try {
        bracket = BracketParser.parse(text, step);
      } catch (NotUnderstood e) {
        // Its message may quote what the others are not to see.
        throw new NotUnderstood("Type for example 0.30 passes 0.35 lifts; or touches.");
      }
      session.read(round, student, bracket);
      return List.of();
    }

    @Override
    boolean back() {
      boolean chosen = student != null && missing.size() > 1;
      student = chosen ? null : student;
      return chosen;
    }
  }

  private static final class Reflects extends CardSteps {
    private final Gate.Reflect gate;
    private final Round round;
    private @Nullable String reason;
    private @Nullable String answer;

    Reflects(LessonSession session, Gate.Reflect gate) {
      super(session);
      this.gate = gate;
      this.round = session.round(gate.round());
    }

    @Override
    Card card() {
      List<String> lines = new ArrayList<>(GateWords.beside(gate, round));
      String question = gate.question();
      if (reason == null || question == null) {
        return Card.asked(
            "Compare",
            lines,
            gate.student() + ", what do you make of it?",
            "Your own words, one line. back: the reading was typed wrong.");
      }
      lines.add(question);
      return question("Think on", lines, gate.student(), answer);
    }

    @Override
    List<String> answered(String text) throws Refused, IOException {
      if (text.equalsIgnoreCase("back")) {
        session.answer(new Answer.Correct());
        return List.of();
      }
      if (reason == null) {
        reason = said(text);
        if (gate.question() != null) {
          return List.of();
        }
      } else if (answer == null) {
        answer = said(text);
        return List.of();
      }
      boolean missed = gate.question() != null && yes(text);
      session.reflect(gate, reason, answer, missed);
      return session.debrief(gate.round());
    }

    @Override
    boolean back() {
      boolean some = reason != null;
      if (answer != null) {
        answer = null;
      } else {
        reason = null;
      }
      return some;
    }
  }

  private static final class Again extends CardSteps {
    private final String student;
    private @Nullable String answer;

    Again(LessonSession session, String student) {
      super(session);
      this.student = student;
    }

    @Override
    @Nullable Card card() {
      List<String> due = session.due(student);
      if (due.isEmpty()) {
        return null;
      }
      List<String> lines = List.of("From an earlier lesson, for " + student + ":", due.get(0));
      return question(title(), lines, student, answer);
    }

    @Override
    List<String> answered(String text) throws Refused, IOException {
      if (answer == null) {
        answer = said(text);
        return List.of();
      }
      boolean missed = yes(text);
      List<String> key = session.askedAgain(student, session.due(student).get(0), answer, missed);
      answer = null;
      return key;
    }

    @Override
    String title() {
      return "It comes back";
    }
  }
}
