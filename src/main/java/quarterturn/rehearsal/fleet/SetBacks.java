package quarterturn.rehearsal.fleet;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import quarterturn.craft.rod.Decision;
import quarterturn.rehearsal.Outcome;
import quarterturn.rehearsal.Visits;

/**
 * Counts the outcomes of sound necks within reach that have three sessions each, and are set back
 * to where they were found in between: by other hands, or with other strings.
 */
public final class SetBacks {
  private static final int SESSIONS = 3;
  private static final double MINUTES_AN_HOUR = 60;

  /** Up to thirty days lie between two sessions, hours as often as weeks. */
  private static final double MOST_HOURS = 720;

  /** The outcomes of a hand-over in which no rod is held to be at fault. */
  private static final Set<String> SOUND =
      Set.of(Decision.Reason.LIMIT.word(), Decision.Reason.TOO_LIVELY.word());

  private final Tally sessions = new Tally();
  private int necks;
  private int faulted;

  /** Plays the sessions on one neck, which others set back in between. */
  static List<Outcome> play(Visits visits, SplittableRandom random) {
    return Stream.generate(
            () -> {
              Outcome outcome = visits.next();
              double hours = Math.pow(MOST_HOURS, random.nextDouble());
              visits.setBack(Duration.ofMinutes((long) (hours * MINUTES_AN_HOUR)));
              return outcome;
            })
        .limit(SESSIONS)
        .toList();
  }

  void add(List<Outcome> outcomes) {
    necks++;
    faulted += outcomes.stream().anyMatch(o -> o.handedOver() && !SOUND.contains(o.id())) ? 1 : 0;
    outcomes.forEach(sessions::add);
  }

  public int necks() {
    return necks;
  }

  /** The share of necks whose rod was held to be at fault in one of their sessions, 0 to 1. */
  public double faulted() {
    return necks == 0 ? 0 : (double) faulted / necks;
  }

  /** The outcomes of all sessions. */
  public Tally sessions() {
    return sessions;
  }
}
