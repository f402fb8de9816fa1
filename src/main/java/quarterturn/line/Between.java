package quarterturn.line;

import java.io.IOException;
import java.util.List;

/** What comes between the prompts of a session, where there is more to it than the session. */
interface Between {
  /** What follows once it was seen to. */
  enum Then {
    /** The prompt as it was. */
    GO_ON,
    /** The prompt, to be said again, since something else was said. */
    SAID,
    /** The session is left. */
    LEAVE
  }

  /** Sees to what comes before the prompt at hand. */
  default Then before() throws IOException, LineSource.StopKeyException {
    return Then.GO_ON;
  }

  /** Whether a line is none of the session's; then what it asks for has been done. */
  default boolean takes(String line) throws IOException {
    return false;
  }

  /** Whether readings may be typed before they are asked for. */
  default boolean ahead() {
    return true;
  }

  /** The words of {@link #takes}, to be completed. */
  default List<String> words() {
    return List.of();
  }

  /** What these words do. */
  default List<String> help() {
    return List.of();
  }

  /** What is kept, and how to go on. */
  String kept();
}
