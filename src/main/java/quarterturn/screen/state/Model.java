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
    String message) {

  /** The model for a new prompt. */
  public static Model of(Prompt prompt, Overview overview, String standing, Instant now) {
    return new Model(prompt, overview, standing, now, Draft.of(prompt), Layer.NONE, 0, "");
  }

  public Model with(Draft next) {
    return new Model(prompt, overview, standing, now, next, layer, scroll, "");
  }

  public Model with(Layer next) {
    return new Model(prompt, overview, standing, now, draft, next, 0, "");
  }

  public Model at(Instant time) {
    return new Model(prompt, overview, standing, time, draft, layer, scroll, message);
  }

  public Model saying(String next) {
    return new Model(prompt, overview, standing, now, draft, layer, scroll, next);
  }

  /** The model scrolled down no further than {@code most} lines. */
  public Model scrolledAtMost(int most) {
    return scroll <= most ? this : scrolled(most - scroll);
  }

  public Model scrolled(int lines) {
    int to = Math.max(0, scroll + lines);
    return new Model(prompt, overview, standing, now, draft, layer, to, message);
  }
}
