package quarterturn.screen;

import java.io.IOException;
import java.time.Duration;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Input;
import quarterturn.screen.terminal.Key;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;

/** The questions of a dialogue on the full screen, one after the other. */
public final class QuestionFace {
  private static final Duration CALM = Duration.ofMinutes(1);

  private QuestionFace() {}

  /**
   * Asks until every question is answered, the person leaves or the terminal is gone.
   *
   * @param surface the surface to paint on, which is not closed, so that a session can use it next
   * @param under whether Esc at the first question leads to where the dialogue was begun
   */
  public static Dialogue.End run(Surface surface, Dialogue dialogue, boolean under)
      throws InterruptedException {
    Question question = dialogue.question();
    QuestionView view = null;
    while (question != null) {
      view = view == null ? new QuestionView(question) : view;
      try {
        if (surface.due()) {
          surface.paint(view.draw(surface.width(), surface.height()));
        }
        Input input = surface.next(CALM);
        if (input instanceof Input.Over over) {
          boolean interrupted = over.status() == ExitStatus.INTERRUPTED;
          return interrupted ? Dialogue.End.INTERRUPTED : Dialogue.End.CUT_SHORT;
        }
        if (input instanceof Input.Broke broke) {
          throw new IllegalStateException("something broke", broke.cause());
        }
        if (input == null && dialogue.lookAgain()) {
          view = view.of(Objects.requireNonNull(dialogue.question()));
        }
        if (input instanceof Input.Pressed pressed) {
          Key key = pressed.key();
          if (view.leaves(key)) {
            return Dialogue.End.LEFT;
          }
          boolean back = key == Key.Named.ESC && dialogue.back();
          if (key == Key.Named.ESC && !back && under) {
            return Dialogue.End.LEFT;
          }
          QuestionView now = view.settled(surface.width(), surface.height());
          QuestionView next = back ? null : taken(now, key, dialogue);
          view = next == null ? null : next.settled(surface.width(), surface.height());
        }
      } catch (IOException gone) {
        return Dialogue.End.CUT_SHORT;
      }
      question = dialogue.question();
    }
    return Dialogue.End.ANSWERED;
  }

  /** The view after a key; null where it answered the question. */
  private static @Nullable QuestionView taken(QuestionView view, Key key, Dialogue dialogue)
      throws IOException {
    String answer = view.answer(key);
    if (answer == null) {
      return view.key(key);
    }
    try {
      dialogue.take(answer);
      return null;
    } catch (RefusedException | NotUnderstoodException e) {
      return view.saying(String.valueOf(e.getMessage()));
    }
  }
}
