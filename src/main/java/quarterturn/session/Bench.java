package quarterturn.session;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** A session as a face sees it: a prompt, a way to answer it, and what is always visible. */
public interface Bench {
  /** The present prompt. Everything that led to it is on disk. */
  Prompt prompt();

  /**
   * Records an answer and moves on to the next prompt.
   *
   * @throws RefusedException when the prompt does not take the answer; the prompt stays
   * @throws IOException when it could not be written; the prompt stays
   */
  void answer(Answer answer) throws RefusedException, IOException;

  /** The instrument, the place in the procedure and the readings and turns so far. */
  Overview overview();

  /** The session's clock. */
  Instant now();

  /**
   * Sets the session's clock, which runs on from there.
   *
   * @throws RefusedException when {@code at} lies before the last event
   */
  void setClock(Instant at) throws RefusedException;

  /**
   * Records that the person leaves, and returns the state that the instrument is left in ("rod
   * turned, strings not yet back at pitch").
   */
  String leave() throws IOException;

  /** The state that the instrument would be left in now. */
  String standing();

  /** News about the last answer, as in the prompt's notes. */
  default List<String> news() {
    return prompt().said().notes();
  }

  /** Whether the prompt is a line of a pause, where a recorded value has to be said once more. */
  default boolean saysAgain() {
    return false;
  }

  /** The steps that will follow the prompt for certain, one line each. */
  default List<String> upcoming() {
    return List.of();
  }

  /**
   * The option ids of every step with a choice, by the id of the step; an empty list where a step
   * takes words.
   */
  default Map<String, List<String>> choices() {
    return Map.of();
  }
}
