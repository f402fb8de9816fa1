package quarterturn.screen.state;

import java.time.Instant;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;

/**
 * The state of a session's screen.
 *
 * @param standing the state the instrument would be left in now
 * @param draft the answer as far as it was given
 * @param layer the view over the prompt
 * @param scroll lines scrolled down in the view on top
 * @param beneath the same of the prompt, while another view is on top
 * @param page lines that a key for a page scrolls
 * @param more whether the text goes on below what is in view
 * @param byHand whether it was scrolled since the draft changed; else the marked answer is in view
 * @param message a hint, or why an answer was not taken; empty for none
 */
public record Model(
    Prompt prompt,
    Overview overview,
    String standing,
    Instant now,
    Draft draft,
    Layer layer,
    int scroll,
    int beneath,
    int page,
    boolean more,
    boolean byHand,
    String message) {

  /** The model for a new prompt. */
  public static Model of(Prompt prompt, Overview overview, String standing, Instant now) {
    return new Model(
        prompt, overview, standing, now, Draft.of(prompt), Layer.NONE, 0, 0, 1, false, false, "");
  }

  /** The model for a prompt that is put anew: what was begun at the same prompt stays. */
  public Model goingOn(Model anew) {
    boolean same =
        prompt.getClass() == anew.prompt.getClass()
            && prompt.said().procedure().equals(anew.prompt.said().procedure())
            && prompt.said().step().equals(anew.prompt.said().step());
    return !same
        ? anew
        : new Model(
            anew.prompt,
            anew.overview,
            anew.standing,
            anew.now,
            draft,
            layer,
            scroll,
            beneath,
            page,
            more,
            byHand,
            message);
  }

  public Model with(Draft next) {
    return new Model(
        prompt, overview, standing, now, next, layer, scroll, beneath, page, more, false, "");
  }

  /** The model with another view on top; the prompt has its place when it comes back. */
  public Model with(Layer next) {
    int place = layer == Layer.NONE ? scroll : beneath;
    int top = next == Layer.NONE ? place : 0;
    return new Model(
        prompt, overview, standing, now, draft, next, top, place, page, false, top > 0, "");
  }

  public Model at(Instant time) {
    return new Model(
        prompt, overview, standing, time, draft, layer, scroll, beneath, page, more, byHand,
        message);
  }

  public Model saying(String next) {
    return new Model(
        prompt, overview, standing, now, draft, layer, scroll, beneath, page, more, byHand, next);
  }

  /**
   * The model with the line that is on top of the view.
   *
   * @param rows lines in view
   * @param below whether more is below them
   */
  public Model scrolledTo(int line, int rows, boolean below) {
    int lines = Math.max(1, rows - 1);
    return new Model(
        prompt, overview, standing, now, draft, layer, line, beneath, lines, below, byHand,
        message);
  }

  /** The model after the person scrolled this many lines down. */
  public Model scrolled(int lines) {
    int to = Math.max(0, scroll + lines);
    return new Model(
        prompt, overview, standing, now, draft, layer, to, beneath, page, more, true, message);
  }
}
