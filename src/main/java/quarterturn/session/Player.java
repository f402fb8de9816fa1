package quarterturn.session;

import java.time.Duration;

/**
 * Somebody who answers by themselves, so that a face can show how it is done.
 *
 * @param bench whose prompts are answered
 * @param mind knows the answer to the prompt at hand
 * @param speed 1 leaves time to read along, 2 half of it
 */
public record Player(Bench bench, Mind mind, double speed) {
  private static final double LEAST_SECONDS = 1.5;
  private static final double MOST_SECONDS = 8;
  private static final double SECONDS_A_CHARACTER = 0.02;
  private static final double SECONDS_A_KEY = 0.3;

  /** Knows what to answer. */
  public interface Mind {
    Answer answer();
  }

  /** How long to look at the prompt at hand before it is answered. */
  public Duration reading() {
    PromptText said = bench.prompt().said();
    int characters = said.text().length();
    for (String note : said.notes()) {
      characters += note.length();
    }
    double seconds = LEAST_SECONDS + SECONDS_A_CHARACTER * characters;
    return seconds(Math.min(MOST_SECONDS, seconds));
  }

  /** How long one key takes. */
  public Duration typing() {
    return seconds(SECONDS_A_KEY);
  }

  private Duration seconds(double seconds) {
    return Duration.ofMillis(Math.round(1000 * seconds / speed));
  }
}
