package quarterturn.session;

import java.time.Duration;

/**
 * A simulated person who answers prompts, so that a face can show a session.
 *
 * @param bench whose prompts are answered
 * @param mind finds the answer to the present prompt
 * @param speed 1 leaves time to read along, 2 half of that time
 */
public record Player(Bench bench, Mind mind, double speed) {
  private static final double LEAST_SECONDS = 1.5;
  private static final double MOST_SECONDS = 8;
  private static final double SECONDS_A_CHARACTER = 0.02;
  private static final double SECONDS_A_KEY = 0.3;

  /** Finds the answer to a bench's present prompt. */
  public interface Mind {
    Answer answer();
  }

  /** Time to show the present prompt before it is answered. */
  public Duration reading() {
    PromptText said = bench.prompt().said();
    int characters = said.text().length();
    for (String note : said.notes()) {
      characters += note.length();
    }
    double seconds = LEAST_SECONDS + SECONDS_A_CHARACTER * characters;
    return seconds(Math.min(MOST_SECONDS, seconds));
  }

  /** Time for one key. */
  public Duration typing() {
    return seconds(SECONDS_A_KEY);
  }

  private Duration seconds(double seconds) {
    return Duration.ofMillis(Math.round(1000 * seconds / speed));
  }
}
