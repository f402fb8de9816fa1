package quarterturn.line;

import java.io.IOException;
import java.util.List;
import quarterturn.session.Bench;

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
  Then before() throws IOException, LineSource.StopKeyException;

  /** Whether a line is none of the session's; then what it asks for has been done. */
  boolean takes(String line) throws IOException;

  /** Whether readings may be typed before they are asked for. */
  boolean ahead();

  /** The words of {@link #takes}, to be completed. */
  List<String> words();

  /** What these words do. */
  List<String> help();

  /** What is kept, and how to go on. */
  String kept();

  /**
   * A session by itself.
   *
   * @param bench the session
   */
  record Nothing(Bench bench) implements Between {
    @Override
    public Then before() {
      return Then.GO_ON;
    }

    @Override
    public boolean takes(String line) {
      return false;
    }

    @Override
    public boolean ahead() {
      return true;
    }

    @Override
    public List<String> words() {
      return List.of();
    }

    @Override
    public List<String> help() {
      return List.of();
    }

    @Override
    public String kept() {
      return bench.overview().later();
    }
  }
}
