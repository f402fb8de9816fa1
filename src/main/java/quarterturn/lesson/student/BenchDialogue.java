package quarterturn.lesson.student;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Round;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;

/** Asks and tells all that comes before a bench's prompts in a lesson, in order. */
public final class BenchDialogue implements Dialogue {
  private final LessonSession session;
  private final Deque<Question> told = new ArrayDeque<>();
  private final Set<String> greeted = new HashSet<>();
  private Gate gate = new Gate.Nobody();
  private List<String> here = List.of();
  private Dialogue steps;
  private boolean open;
  private int spread;
  private final Set<Integer> debriefed = new HashSet<>();

  /** Whether nothing was told yet, so that what was told before a break is not told again. */
  private boolean begin = true;

  private int asked;
  private String duties = "";
  private List<String> news = List.of();
  private @Nullable Asking asking;
  private boolean left;

  /** A question that comes before all else, and what its answer does. */
  private record Asking(Question question, Answered answered) {}

  private interface Answered {
    void with(String answer) throws RefusedException, IOException;
  }

  public BenchDialogue(LessonSession session) {
    this.session = session;
    this.steps = steps();
  }

  /** Takes the teacher's orders and sees what comes first; true where a prompt was opened anew. */
  public boolean look() throws IOException {
    try {
      session.look();
      Gate now = session.gate();
      List<String> present = session.lesson().students();
      boolean other = !now.goesOnFrom(gate) || !present.equals(here);
      gate = now;
      here = present;
      if (other) {
        steps = steps();
      }
    } catch (RefusedException e) {
      throw new IOException("the lesson could not go on: " + e.getMessage(), e);
    }
    greet();
    readTogether();
    debrief();
    boolean closed = before() != null;
    boolean fresh = !closed && opened();
    open = !closed;
    return fresh;
  }

  private Dialogue steps() {
    if (gate instanceof Gate.Predict predict) {
      return new Predicting(session, predict);
    } else if (gate instanceof Gate.ReadBlind read) {
      return new ReadingAlone(session, read);
    } else if (gate instanceof Gate.Reflect reflect) {
      return new Reflecting(session, reflect);
    } else if (gate instanceof Gate.Nobody || (here.isEmpty() && !(gate instanceof Gate.Over))) {
      return new Arriving(session);
    }
    return new Holding(gate);
  }

  private void greet() {
    boolean busy = steps instanceof AskingAgain && steps.question() != null;
    for (String student : busy ? List.<String>of() : session.lesson().students()) {
      if (greeted.add(student) && !session.due(student).isEmpty()) {
        steps = new AskingAgain(session, student);
        return;
      }
    }
  }

  /** Tells how far the readings of one gap lie apart, once a round. */
  private void readTogether() {
    int round = session.lesson().rounds().size();
    if (gate instanceof Gate.Open now && now.spread() != null && round != spread) {
      spread = round;
      List<String> lines = new ArrayList<>(now.spread().lines());
      lines.add("Now agree on one reading and give it together.");
      told.add(new Question.Show("What you read", lines));
    }
  }

  /** Tells of each reading that was predicted, once all have answered what is asked after it. */
  private void debrief() {
    List<Round> rounds = session.lesson().rounds();
    for (Round round : rounds) {
      boolean done =
          round.result() != null && round.toReflect(session.lesson().students()).isEmpty();
      if (done && debriefed.add(round.n()) && !begin) {
        List<String> lines = session.debrief(round);
        if (!lines.isEmpty()) {
          told.add(new Question.Show("All have answered", lines));
        }
      }
    }
    begin = false;
  }

  private boolean opened() {
    int now = session.asked();
    String who = session.duties();
    boolean fresh = !open || now != asked;
    if (fresh) {
      news = new ArrayList<>();
      if (!who.isEmpty() && !who.equals(duties)) {
        news.add("In this part: " + who + ".");
      }
      if (now != asked) {
        session.talk().forEach(question -> news.add("To talk about: " + question));
      }
      duties = who;
    }
    asked = now;
    return fresh;
  }

  /** The lines to tell with the prompt that was opened. */
  public List<String> news() {
    return news;
  }

  /** Whether the teacher has ended the lesson and everything has been told. */
  public boolean over() {
    return gate instanceof Gate.Over && told.isEmpty();
  }

  /** Whether those at the bench have said that they leave. */
  public boolean left() {
    return left;
  }

  private List<String> leaving() {
    List<String> parting = session.overview().parting();
    List<String> lines = new ArrayList<>();
    if (!parting.isEmpty()) {
      lines.add("Before you leave: " + String.join(" ", parting));
    }
    lines.add("If you leave now: " + session.standing() + ".");
    return lines;
  }

  /** Asks whether to leave. */
  public void leave() {
    asking =
        new Asking(
            Question.Choose.sure(
                "Leave now?", leaving(), "Type yes to leave", "Anything else stays."),
            answer -> left = answer.toLowerCase(Locale.ROOT).matches("y|yes|quit"));
  }

  /** Asks why the bench is to be stopped. */
  public void stop() {
    if (!session.lesson().over()) {
      asking =
          new Asking(
              new Question.Words(
                  "Stop this bench",
                  List.of(
                      "To stop is always right. Take your hands off the truss rod nut and leave"
                          + " everything as it is. The teacher sees the reason, and nobody's"
                          + " name."),
                  "Why? It may stay empty. Enter stops the bench.",
                  "Enter stops the bench."),
              session::stop);
    }
  }

  @Override
  public @Nullable Question question() {
    return asking == null ? before() : asking.question();
  }

  private @Nullable Question before() {
    if (!told.isEmpty()) {
      return told.peek();
    }
    Question now = steps.question();
    if (now == null && !(gate instanceof Gate.Open)) {
      steps = steps();
      now = steps.question();
    }
    return now;
  }

  /**
   * Does what a word of the lesson asks for; null where the line is no such word, or the answer to
   * an open question.
   */
  public @Nullable Taken word(String text) throws RefusedException, IOException {
    List<String> said = asking == null ? BenchWords.take(session, text) : null;
    return said == null ? null : new Taken("", said);
  }

  @Override
  public Taken take(String text) throws RefusedException, IOException {
    if (asking != null) {
      asking.answered().with(text);
      asking = null;
      return Taken.SILENTLY;
    }
    Taken word = word(text);
    if (word != null) {
      return word;
    }
    if (!told.isEmpty()) {
      told.remove();
      return Taken.SILENTLY;
    }
    Taken taken = steps.take(text);
    if (!taken.told().isEmpty()) {
      told.add(new Question.Show(AskingAgain.TITLE, taken.told()));
    }
    return Taken.briefly(taken.brief());
  }

  @Override
  public boolean back() {
    if (asking != null) {
      asking = null;
      return true;
    }
    return told.isEmpty() && steps.back();
  }
}
