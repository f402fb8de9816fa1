package quarterturn.line;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.journal.DisplacedException;

/** What a lesson puts between the prompts of a session. */
interface Between {
  /** What follows once everything before a prompt has been done. */
  enum Then {
    /** The prompt follows as it was. */
    GO_ON,
    /** The prompt is printed again, since other lines came in between. */
    SAID,
    /** The session is left. */
    LEAVE
  }

  /** Does all that comes before the prompt at hand. */
  default Then before() throws IOException, LineSource.StopKeyException {
    return Then.GO_ON;
  }

  /** Whether something came up that breaks off what is being typed. */
  default boolean changed() {
    return false;
  }

  /** Lets time pass; a line that was typed meanwhile and can't wait, or null. */
  default @Nullable String meanwhile(LineSource in, Duration time)
      throws IOException, LineSource.StopKeyException, LineSource.ChangedException {
    in.pause(time);
    return null;
  }

  /**
   * Whether a line is not meant for the session; if so, what it asks for has been done.
   *
   * @param asks the prompt at which it was typed
   */
  default boolean takes(String line, String asks) throws IOException {
    return false;
  }

  /** Whether readings may be typed before they are asked for. */
  default boolean ahead() {
    return true;
  }

  /** The words that {@link #takes} understands, for completion. */
  default List<String> words() {
    return List.of();
  }

  /** Help lines on the words of {@link #takes}. */
  default List<String> help() {
    return List.of();
  }

  /** Tells what happened to the record, where it is now, and how to go on. */
  default String stopped(DisplacedException record) {
    return "Stopped: " + record.getMessage();
  }

  /** Tells what is kept once the session is left, and how to go on. */
  String kept();
}
