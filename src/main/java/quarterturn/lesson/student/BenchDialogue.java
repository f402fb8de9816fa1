package quarterturn.lesson.student;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Round;
import quarterturn.session.Dialogue;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;

/** Asks and tells all that comes before a bench's prompts in a lesson, in order. */
public final class BenchDialogue implements Dialogue {
  private final LessonSession session;
  private final Deque<Question> told = new ArrayDeque<>();
  private final Set<String> greeted = new HashSet<>();
  private Stands stands = Stands.NOWHERE;
  private Dialogue steps;

  /** What was being asked when the bench was stopped or held; null where it was neither. */
  private @Nullable Aside aside;

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

  /** Questions that wait until the bench goes on, and where it stood as they were asked. */
  private record Aside(Stands stands, Dialogue steps) {}

  public BenchDialogue(LessonSession session) {
    this.session = session;
    this.steps = steps();
  }

  /** Takes the teacher's orders and sees what comes first; true where a prompt was opened anew. */
  public synchronized boolean look() throws IOException {
    Stands before = stands;
    try {
      stands = Stands.of(session);
    } catch (RefusedException e) {
      throw new IOException("the lesson could not go on: " + e.getMessage(), e);
    }
    if (!stands.sameQuestions(before)) {
      follow(before);
    }
    greet();
    readTogether();
    debrief();
    boolean closed = before() != null;
    boolean fresh = !closed && opened();
    open = !closed;
    return fresh;
  }

  /** Puts aside what was asked where the bench has to wait, and takes it up again afterwards. */
  private void follow(Stands before) {
    if (stands.waits() && !before.waits()) {
      aside = new Aside(before, steps);
    }
    boolean goesOn = aside != null && stands.sameQuestions(aside.stands());
    steps = aside != null && goesOn ? aside.steps() : steps();
    aside = stands.waits() ? aside : null;
    if (gate() instanceof Gate.Over) {
      asking = null;
      told.clear();
    }
  }

  private Gate gate() {
    return stands.gate();
  }

  /**
   * Whether a look would change what is on view: an order came. Another thread may ask while an
   * answer is awaited.
   */
  public synchronized boolean changed() {
    try {
      return !Stands.of(session).equals(stands);
    } catch (IOException | RefusedException e) {
      // The next look says so.
      return true;
    }
  }

  /** Whether others are not to see what is typed now. */
  public synchronized boolean secret() {
    boolean own = gate() instanceof Gate.Predict || gate() instanceof Gate.ReadBlind;
    return own && asking == null && told.isEmpty() && stands.here().size() > 1;
  }

  private Dialogue steps() {
    Gate gate = gate();
    if (gate instanceof Gate.Predict predict) {
      return new Predicting(session, predict);
    } else if (gate instanceof Gate.ReadBlind read) {
      return new ReadingAlone(session, read);
    } else if (gate instanceof Gate.Reflect reflect) {
      return new Reflecting(session, reflect);
    } else if (gate instanceof Gate.Nobody
        || (stands.here().isEmpty() && gate instanceof Gate.Open)) {
      return new Arriving(session);
    }
    return new Holding(gate, session.unveiled());
  }

  private void greet() {
    boolean busy = stands.waits() || (steps instanceof AskingAgain && steps.question() != null);
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
    if (gate() instanceof Gate.Open now && now.spread() != null && round != spread) {
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

  /** Whether the teacher has ended the lesson. */
  public boolean over() {
    return gate() instanceof Gate.Over;
  }

  /** Whether those at the bench have said that they leave. */
  public boolean left() {
    return left;
  }

  /** Asks whether to leave. */
  public void leave() {
    asking = Asking.whetherToLeave(session, () -> left = true);
  }

  /** Asks why the bench is to be stopped. */
  public void stop() {
    asking = session.lesson().over() ? asking : Asking.whyToStop(session);
  }

  /** Whether it is asked why the bench is to be stopped. */
  public boolean stopping() {
    return asking != null && asking.stops();
  }

  @Override
  public synchronized @Nullable Question question() {
    return asking == null
        ? before()
        : asking.asked().with(stands.waits() ? GateWords.waiting(gate()) : List.of());
  }

  private @Nullable Question before() {
    if (tells()) {
      return told.peek();
    }
    Question now = steps.question();
    if (now == null && !(gate() instanceof Gate.Open)) {
      steps = steps();
      now = steps.question();
    }
    return now;
  }

  /** Whether something is to be told; a stop, a hold and the lesson's end come before it. */
  private boolean tells() {
    return !told.isEmpty() && !stands.waits() && !(gate() instanceof Gate.Over);
  }

  /**
   * Does what a word of the lesson asks for; null where the line is no such word, or the reason of
   * a stop.
   */
  public synchronized @Nullable Taken word(String text) throws RefusedException, IOException {
    List<String> said = stopping() ? null : BenchWords.take(session, text, ownWords());
    if (said == null) {
      return null;
    }
    asking = null;
    return new Taken("", said);
  }

  private boolean ownWords() {
    Question now = question();
    return now == null ? session.prompt() instanceof Prompt.Write : now instanceof Question.Words;
  }

  /** What stands on a line before the word that stops the bench; empty where there is none. */
  public synchronized String beforeStop(String text) {
    BenchWords.Stop stop = stopping() ? null : BenchWords.stop(text, ownWords());
    return stop == null ? "" : stop.before();
  }

  @Override
  public synchronized Taken take(String text) throws RefusedException, IOException {
    Taken word = word(text);
    if (word != null) {
      return word;
    }
    if (asking != null) {
      asking.answered().with(text);
      asking = null;
      return Taken.SILENTLY;
    }
    if (tells()) {
      told.remove();
      return Taken.SILENTLY;
    }
    Taken taken = answered(text);
    if (!taken.told().isEmpty()) {
      told.add(new Question.Show(AskingAgain.TITLE, taken.told()));
    }
    return Taken.briefly(taken.brief());
  }

  private Taken answered(String text) throws RefusedException, IOException {
    try {
      return steps.take(text);
    } catch (NotUnderstoodException e) {
      Question asked = steps.question();
      throw secret() && asked != null ? Unquoted.of(e, text, asked) : e;
    }
  }

  @Override
  public synchronized boolean back() {
    if (asking != null) {
      asking = null;
      return true;
    }
    return !tells() && steps.back();
  }
}
