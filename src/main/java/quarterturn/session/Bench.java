package quarterturn.session;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** One session as a face sees it: a prompt, an answer, and what is always visible. */
public interface Bench {
  /** What is wanted now. Everything that led here is on disk. */
  Prompt prompt();

  /**
   * Records the answer and moves on.
   *
   * @throws RefusedException when the prompt does not take it; the prompt stays
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
   * Records that the person leaves, and says in what state the instrument is being left ("rod
   * turned, strings not yet back at pitch").
   */
  String leave() throws IOException;

  /** In what state the instrument would be left now. */
  String standing();

  /** What the last answer came to, as the prompt notes it. */
  default List<String> news() {
    return prompt().said().notes();
  }

  /** Whether the prompt is a line of a pause: what stands is to be said once more. */
  default boolean saysAgain() {
    return false;
  }

  /** What comes after the prompt, a line a step, as far as it is certain. */
  default List<String> upcoming() {
    return List.of();
  }

  /**
   * Every question of the job with a choice of answers: by the id of its step, their ids; none
   * where a line of words is asked for.
   */
  default Map<String, List<String>> choices() {
    return Map.of();
  }
}
