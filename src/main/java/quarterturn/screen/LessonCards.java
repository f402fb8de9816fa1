package quarterturn.screen;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.bench.BenchWords;
import quarterturn.lesson.bench.Gate;
import quarterturn.lesson.bench.LessonSession;
import quarterturn.screen.page.Foot;
import quarterturn.screen.state.Effect;
import quarterturn.screen.state.Field;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Overview;
import quarterturn.session.Refused;
import quarterturn.unit.NotUnderstood;

/** What lies over a bench's session in a lesson, one card at a time, and what its keys do. */
public final class LessonCards {
  /** Stops the bench, anywhere. */
  static final Key STOP = new Key.Function(8);

  private static final Key HELP = new Key.Function(1);
  private static final Key LEAVE = new Key.Function(10);
  private static final int PAGE = 5;
  private static final String MARK = " s or F8: stop the bench ";

  private final LessonSession session;
  private final String again;
  private final LongSupplier nanos;
  private final Deque<Card> told = new ArrayDeque<>();
  private final Set<String> greeted = new HashSet<>();
  private Gate gate = new Gate.Nobody();
  private List<String> here = List.of();
  private CardSteps steps;
  private @Nullable Card card;

  /** Whether the session's prompt was on top at the last look. */
  private boolean open;

  private boolean stopping;
  private boolean leaving;
  private int spread;
  private int asked;
  private String duties = "";
  private String news = "";
  private Field field = Field.EMPTY;
  private String message = "";
  private int scroll;
  private long since;

  /**
   * Nothing yet.
   *
   * @param again the command by which the bench goes on later
   * @param nanos a clock that only goes forward
   */
  public LessonCards(LessonSession session, String again, LongSupplier nanos) {
    this.session = session;
    this.again = again;
    this.nanos = nanos;
    this.steps = CardSteps.at(session, gate);
  }

  /** The card on top, or null where the session's prompt is open. */
  public @Nullable Card card() {
    return card;
  }

  /** What is told with the prompt that was opened. */
  public String news() {
    return news;
  }

  String kept() {
    return session.lesson().over()
        ? "Everything is kept."
        : "Everything is kept. Go on later with: " + again;
  }

  /** Takes the teacher's orders and sees what comes first; true where a prompt was opened anew. */
  public boolean look() throws IOException {
    try {
      session.look();
      Gate now = session.gate();
      List<String> present = session.lesson().students();
      if (!now.equals(gate) || !present.equals(here)) {
        gate = now;
        here = present;
        steps = CardSteps.at(session, now);
      }
    } catch (Refused e) {
      throw new IOException("the lesson could not go on: " + e.getMessage(), e);
    }
    greet();
    show();
    boolean fresh = card == null && opened(open);
    open = card == null;
    return fresh;
  }

  private void show() {
    if (gate instanceof Gate.Open now && now.spread() != null) {
      int round = session.lesson().rounds().size();
      if (round != spread) {
        spread = round;
        told.add(Card.told("What you read", now.spread().lines()));
      }
    }
    Card next = next();
    if (next == null || card == null || !next.equals(card)) {
      boolean other = card == null || next == null || !next.lines().equals(card.lines());
      since = other ? nanos.getAsLong() : since;
      scroll = other ? 0 : scroll;
      field = Field.EMPTY;
    }
    card = next;
  }

  private @Nullable Card next() {
    if (leaving) {
      return new Card(
          "Leave now?",
          List.of("The instrument would be left like this: " + session.standing() + ".", kept()),
          null,
          false,
          "y leaves. Esc or n stays.",
          false);
    }
    if (stopping) {
      return Card.asked(
          "Stop this bench",
          List.of(
              "To stop is always right. Take your hands off the rod nut and leave everything as it"
                  + " is. The teacher sees the reason, and nobody's name."),
          "Why? It may stay empty. Enter stops the bench.",
          "Enter stops the bench, Esc goes back.");
    }
    if (!told.isEmpty()) {
      return told.peek();
    }
    Card now = steps.card();
    if (now == null && !(gate instanceof Gate.Open)) {
      steps = CardSteps.at(session, gate);
      now = steps.card();
    }
    return now;
  }

  private void greet() {
    for (String student : session.lesson().students()) {
      if (greeted.add(student)) {
        steps = steps.first(CardSteps.due(session, student));
      }
    }
  }

  private boolean opened(boolean before) {
    int now = session.asked();
    String who = session.duties();
    boolean fresh = !before || now != asked;
    if (fresh) {
      String part = who.isEmpty() || who.equals(duties) ? "" : "In this part: " + who + ". ";
      List<String> talk = now == asked ? List.of() : session.talk();
      news = part + (talk.isEmpty() ? "" : "To talk about: " + String.join(" ", talk));
      duties = who;
    }
    asked = now;
    return fresh;
  }

  /** Begins to stop the bench. */
  public void stop() {
    stopping = !session.lesson().over();
    leaving = false;
    message = "";
    show();
  }

  public Effect key(Key key) throws IOException {
    message = "";
    if (key instanceof Key.Ctrl ctrl && ctrl.letter() == 'l') {
      return new Effect.Repaint();
    }
    if (leaving) {
      return leave(key);
    }
    boolean typing = card != null && card.asks() != null;
    if (key == Key.Named.PAGE_DOWN || key == Key.Named.PAGE_UP) {
      scroll = Math.max(0, scroll + (key == Key.Named.PAGE_DOWN ? PAGE : -PAGE));
    } else if (key.equals(HELP) || (Update.isLetter(key, '?') && field.blank())) {
      message = (card == null ? "" : card.help() + " ") + String.join(" ", BenchWords.HELP);
    } else if (key.equals(LEAVE) || (!typing && Update.isLetter(key, 'q'))) {
      leaving = true;
    } else if (!typing && Update.isLetter(key, 's')) {
      stop();
    } else if (key == Key.Named.ESC) {
      back();
    } else if (key == Key.Named.ENTER) {
      return entered();
    } else if (typing) {
      field = field.with(key);
      return new Effect.None();
    }
    show();
    return new Effect.None();
  }

  private Effect leave(Key key) {
    if (Update.isLetter(key, 'y')) {
      return new Effect.Leave();
    }
    leaving = !(key == Key.Named.ESC || Update.isLetter(key, 'n'));
    show();
    return new Effect.None();
  }

  private void back() {
    if (stopping) {
      stopping = false;
    } else if (!field.blank()) {
      field = Field.EMPTY;
    } else if (!steps.back()) {
      message = "Esc never leaves; F10 does.";
    }
  }

  private Effect entered() throws IOException {
    String text = field.text().strip();
    try {
      if (stopping) {
        session.stop(text);
        stopping = false;
      } else if (!told.isEmpty()) {
        told.remove();
      } else if (gate instanceof Gate.Over) {
        return new Effect.Leave();
      } else if (card != null && card.asks() != null) {
        answered(card, text);
      }
    } catch (Refused | NotUnderstood e) {
      message = String.valueOf(e.getMessage());
    }
    if (message.isEmpty()) {
      field = Field.EMPTY;
    }
    return new Effect.None();
  }

  private void answered(Card on, String text) throws Refused, IOException {
    List<String> said = text.isEmpty() ? null : BenchWords.take(session, text);
    if (said != null) {
      message = String.join(" ", said);
      field = Field.EMPTY;
      return;
    }
    long waited = nanos.getAsLong() - since;
    if (on.question() && waited < Gate.QUESTION_PAUSE.toNanos()) {
      message = "Take a moment to think: an answer counts after 5 seconds.";
      return;
    }
    List<String> after = steps.answered(text);
    if (!after.isEmpty()) {
      told.add(Card.told(steps.title(), after));
    }
  }

  public Canvas draw(Overview overview, int width, int height) {
    if (card == null) {
      throw new IllegalStateException("the session's own view is on top");
    }
    scroll = Math.min(scroll, Math.max(0, CardView.lines(card, width) - 1));
    return CardView.draw(card, field, scroll, message, overview, width, height);
  }

  /** A session's own view, with the key that stops the bench on it. */
  static Canvas marked(Canvas page) {
    int row = page.height() - Foot.rows(page.height());
    if (page.width() > MARK.length() + 4 && row > 0) {
      page.put(page.width() - MARK.length() - 2, row, MARK, Ink.STRONG);
    }
    return page;
  }
}
