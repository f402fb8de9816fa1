package quarterturn.screen;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.student.BenchDialogue;
import quarterturn.lesson.student.BenchWords;
import quarterturn.lesson.student.Gate;
import quarterturn.lesson.student.LessonSession;
import quarterturn.screen.page.CardView;
import quarterturn.screen.page.Foot;
import quarterturn.screen.state.Effect;
import quarterturn.screen.state.Field;
import quarterturn.screen.state.Picks;
import quarterturn.screen.state.Scrolling;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Dialogue;
import quarterturn.session.Overview;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Pasted;

/** The cards of a lesson over a bench's session, one at a time, and their keys. */
public final class LessonCards {
  /** The key that stops the bench, in any view. */
  static final Key STOP = new Key.Function(8);

  private static final Key HELP = new Key.Function(1);
  private static final Key LEAVE = new Key.Function(10);
  private static final String MARK = "F8, then Enter: stop the bench ";

  /** How a bench is stopped by keys. */
  private static final String STOPPING =
      "F8, then Enter or F8 again: stop this bench, also while you type. ";

  private final LessonSession session;
  private final String again;
  private final LongSupplier nanos;
  private final BenchDialogue dialogue;
  private @Nullable Question card;

  private Field field = Field.EMPTY;

  /** What was typed when something else came up, by what was asked. */
  private final Map<String, Field> begun = new HashMap<>();

  private String message;
  private String told;
  private int scroll;

  /** Most lines that the card could be scrolled down as it was last drawn. */
  private int most;

  /** Lines that a key for a page scrolled as it was last drawn. */
  private int page;

  private long since;

  /**
   * Cards before the lesson has asked anything.
   *
   * @param again the command that resumes the bench later
   * @param nanos a clock that only goes forward
   * @param told what is said on the first card or with the first prompt, or empty
   */
  public LessonCards(LessonSession session, String again, LongSupplier nanos, String told) {
    this.message = told;
    this.told = told;
    this.session = session;
    this.again = again;
    this.nanos = nanos;
    this.dialogue = new BenchDialogue(session);
  }

  /** The card to show, or null where the session's prompt is shown. */
  public @Nullable Question card() {
    return card;
  }

  /** News of the lesson, to be told with the prompt that was opened. */
  public String news() {
    String news = (told + " " + String.join(" ", dialogue.news())).strip();
    told = "";
    return news;
  }

  String kept() {
    return BenchWords.later(session.lesson(), again);
  }

  /** Reads the teacher's orders and updates the card; returns whether a prompt was newly opened. */
  public boolean look() throws IOException {
    boolean fresh = dialogue.look();
    show();
    return fresh;
  }

  private void show() {
    Question next = dialogue.question();
    if (next == null || card == null || !next.equals(card)) {
      boolean other = card == null || next == null || !next.lines().equals(card.lines());
      since = other ? nanos.getAsLong() : since;
      scroll = other ? 0 : scroll;
    }
    String asked = asks(card);
    if (!asked.equals(asks(next))) {
      if (!field.blank()) {
        begun.put(asked, field);
      }
      Field before = begun.remove(asks(next));
      field = before == null ? Field.EMPTY : before;
    }
    card = next;
  }

  private static String asks(@Nullable Question card) {
    return card instanceof Question.Asked asked ? asked.asks() : "";
  }

  /** Asks why the bench is to be stopped; stops it where that was asked already. */
  public void stop() throws IOException {
    message = "";
    if (dialogue.stopping()) {
      entered(field.text().strip());
    } else {
      dialogue.stop();
    }
    show();
  }

  public Effect key(Key key) throws IOException {
    message = "";
    told = "";
    if (key instanceof Key.Ctrl ctrl && ctrl.letter() == 'l') {
      return new Effect.Repaint();
    }
    boolean typing = card instanceof Question.Asked;
    if (key instanceof Key.Paste) {
      message = typing ? field.refusal(key) : Pasted.NOWHERE;
      field = typing ? field.with(key) : field;
      return new Effect.None();
    }
    String answer = Picks.answer(card, field, key);
    if (key == Key.Named.PAGE_DOWN || key == Key.Named.PAGE_UP) {
      scroll = Math.max(0, Math.min(most, scroll + Scrolling.lines(key, page)));
    } else if (key.equals(HELP) || (Update.isLetter(key, '?') && field.blank())) {
      message =
          (card == null ? "" : card.help() + " ") + STOPPING + String.join(" ", BenchWords.HELP);
    } else if (key.equals(LEAVE) || (!typing && Update.isLetter(key, 'q'))) {
      dialogue.leave();
    } else if (!typing && Update.isLetter(key, 's')) {
      stop();
    } else if (key == Key.Named.ESC) {
      back();
    } else if (answer != null) {
      return entered(answer);
    } else if (typing) {
      field = field.with(key);
      return new Effect.None();
    }
    show();
    return new Effect.None();
  }

  private void back() {
    if (!field.blank()) {
      field = Field.EMPTY;
    } else if (!dialogue.back()) {
      message = "Esc never leaves; F10 does.";
    }
  }

  private Effect entered(String text) throws IOException {
    try {
      if (dialogue.over()) {
        return new Effect.Leave();
      }
      if (!(card instanceof Question.Hold)) {
        answered(text);
      }
    } catch (RefusedException | NotUnderstoodException e) {
      message = String.valueOf(e.getMessage());
    }
    return dialogue.left() ? new Effect.Leave() : new Effect.None();
  }

  private void answered(String text) throws RefusedException, IOException {
    String before = dialogue.beforeStop(text);
    Dialogue.Taken taken = dialogue.word(text);
    long waited = nanos.getAsLong() - since;
    boolean ponder = card instanceof Question.Asked asked && asked.ponder();
    if (taken == null && ponder && waited < Gate.QUESTION_PAUSE.toNanos()) {
      message = "Take a moment to think: an answer counts after 5 seconds.";
      return;
    }
    message = String.join(" ", (taken == null ? dialogue.take(text) : taken).told());
    field = before.isEmpty() ? Field.EMPTY : Field.of(before);
    begun.remove(asks(card));
  }

  public Canvas draw(Overview overview, int width, int height) {
    if (card == null) {
      throw new IllegalStateException("the session's own view is on top");
    }
    most = CardView.mostScroll(card, width, height);
    page = CardView.page(card, width, height);
    return CardView.draw(card, field, scroll, message, overview, width, height);
  }

  /**
   * The session's view with the key that stops the bench added to it.
   *
   * @param lettered whether its letter does too
   */
  static Canvas marked(Canvas page, boolean lettered) {
    String mark = (lettered ? " s or " : " ") + MARK;
    int row = page.height() - Foot.rows(page.height());
    if (page.width() > mark.length() + 4 && row > 0) {
      page.put(page.width() - mark.length() - 2, row, mark, Ink.STRONG);
    }
    return page;
  }
}
