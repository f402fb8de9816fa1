package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quarterturn.lesson.bench.BenchWords;
import quarterturn.lesson.bench.Gate;
import quarterturn.lesson.bench.LessonSession;
import quarterturn.procedure.Unreadable;
import quarterturn.report.Dates;
import quarterturn.session.ExitStatus;
import quarterturn.session.Refused;
import quarterturn.unit.Printable;

/** A bench in a lesson as plain lines: the session, and what the lesson puts before its prompts. */
public final class LessonLine implements Between {
  private final LessonSession session;
  private final String again;
  private final LineSource in;
  private final Paper paper;
  private final LessonTalk talk;
  private final LessonSteps steps;

  /** Students whose questions of earlier lessons were looked for. */
  private final Set<String> greeted = new HashSet<>();

  /** The reading whose spread was told. */
  private int spread;

  private String duties = "";

  /** The prompt whose questions were told. */
  private int talked;

  private LessonLine(LessonSession session, String again, LineSource in, PrintWriter out) {
    this.session = session;
    this.again = again;
    this.in = in;
    this.paper = new Paper(out, in);
    this.talk = new LessonTalk(session, in, paper);
    this.steps = new LessonSteps(session, talk, in, paper);
  }

  /**
   * Plays a bench's sessions until they end or the bench is left.
   *
   * @param again the command by which the bench goes on later
   * @return the exit status
   */
  public static int run(
      LessonSession session, String again, LineSource in, PrintWriter out, Dates dates)
      throws IOException, Unreadable {
    LessonLine line = new LessonLine(session, again, in, out);
    try (LessonWatch watch = LessonWatch.over(session, in::aside)) {
      while (true) {
        int status = LineFace.run(session, in, out, dates, line);
        boolean done = status == ExitStatus.DONE && session.prompt().ended();
        if (!done || watch.broke() != null) {
          return status;
        }
        if (!session.next()) {
          line.paper.say("Everything that was planned is done at this bench. Thank you.");
          return status;
        }
        line.paper.say(List.of("", "This procedure is done here. The next one begins."));
      }
    }
  }

  @Override
  public Then before() throws IOException, LineSource.Interrupted {
    boolean said = false;
    while (!talk.leaving()) {
      Gate gate = gate();
      if (greet()) {
        said = true;
      } else if (session.lesson().students().isEmpty() && !(gate instanceof Gate.Over)) {
        steps.see(new Gate.Nobody());
      } else if (gate instanceof Gate.Open open) {
        return open(open) || said ? Then.SAID : Then.GO_ON;
      } else if (gate instanceof Gate.Over) {
        paper.say(List.of("", "The teacher has ended the lesson. Leave everything in order."));
        return Then.LEAVE;
      } else {
        said = true;
        steps.see(gate);
      }
    }
    return Then.LEAVE;
  }

  private Gate gate() throws IOException {
    try {
      session.look();
      return session.gate();
    } catch (Refused e) {
      throw new IOException("the lesson could not go on: " + e.getMessage(), e);
    }
  }

  /** Asks what is due from earlier lessons; true where something was. */
  private boolean greet() throws IOException, LineSource.Interrupted {
    for (String student : session.lesson().students()) {
      if (greeted.add(student)) {
        List<String> due = session.due(student);
        if (!due.isEmpty()) {
          steps.again(student, due);
          return true;
        }
      }
    }
    return false;
  }

  /** Says what comes with an open prompt; true where there was something. */
  private boolean open(Gate.Open open) {
    boolean said = false;
    int round = session.lesson().rounds().size();
    if (open.spread() != null && spread != round) {
      spread = round;
      paper.say("");
      paper.say(open.spread().lines());
      paper.say("Now agree on one reading and give it together.");
      said = true;
    }
    String now = session.duties();
    if (!now.isEmpty() && !now.equals(duties)) {
      paper.say(List.of("", "In this part: " + now + "."));
      said = true;
    }
    duties = now;
    int asked = session.asked();
    if (asked != talked && !session.talk().isEmpty()) {
      paper.say("");
      session.talk().forEach(question -> paper.say("To talk about: " + Printable.of(question)));
      said = true;
    }
    talked = asked;
    return said;
  }

  @Override
  public boolean takes(String line) throws IOException {
    return talk.takes(line);
  }

  @Override
  public boolean ahead() {
    return false;
  }

  @Override
  public List<String> words() {
    return BenchWords.WORDS;
  }

  @Override
  public List<String> help() {
    return BenchWords.HELP;
  }

  @Override
  public String kept() {
    return session.lesson().over()
        ? "Everything is kept."
        : "Everything is kept. Go on later with: " + again;
  }
}
