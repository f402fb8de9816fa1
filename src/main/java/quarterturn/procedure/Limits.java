package quarterturn.procedure;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import quarterturn.procedure.condition.Feel;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/**
 * The limits the engine enforces, whatever a procedure file says, and the other figures of policy.
 * Read from {@code safety/limits.yaml}.
 *
 * @param perReading most rod turn between two readings
 * @param firstMove most on a neck whose answer is not known
 * @param freeFirst how far a nut that nobody has turned is turned back, and to its mark again,
 *     before it is first tightened
 * @param beginnerDay most a beginner may turn, either way added up, in a {@code day}
 * @param restHours how long the rod rests after that
 * @param fromAsFound most the rod may stand from where it was found
 * @param movesWithoutAnswer turns in a row without an answer before handing over
 * @param movesInSlack the same for a technician on a two-way rod whose nut turns freely: its slack
 *     zone is crossed by eighths
 * @param movesWhileTouching turns in a row before handing over while the string touches, where no
 *     answer could be seen
 * @param wrongWayMoves turns that moved the neck the wrong way before handing over
 * @param stiffTurns turns running that felt stiff before handing over
 * @param settleMinutes least time between retuning and a reading that counts
 * @param retuneAfterMinutes a break after which the strings must be tuned again before a reading
 * @param readingHoldsMinutes how long tuning holds for a reading, and a reading for a turn
 * @param stopFeels feels after which the rod is not turned again
 * @param findingNeeded outcomes of a hand-over after which the rod is not turned in any session
 *     until a repairer's finding is on record
 * @param keptSlack those of them after which nothing is begun on the instrument, until then
 * @param turnNeeds what must be true of every turn
 * @param tightenNeeds what must be true before tightening
 * @param apartNeeds what must be true before the neck is loosened in its pocket
 * @param turnHazards ids of the hazards shown before every rod turn
 * @param day over how long a beginner's turns are added up
 * @param mostReported the most that is taken for one turn of the rod
 * @param putOff how often a turn is put off for want of a fresh reading
 * @param pause the least pause in which a neck is taken to creep
 * @param knownFor how old what is known of a neck is taken to be where nobody says
 * @param clocks how far a clock may be off the record
 * @param jumpMm the change of relief between two sessions above which something was done meanwhile
 * @param creepShare the share of a movement that may still come within days
 * @param answers what counts as an answer of the neck
 * @param climate what counts as another climate
 * @param rechecks when an instrument is looked at again
 */
public record Limits(
    Turn perReading,
    Turn firstMove,
    Turn freeFirst,
    Turn beginnerDay,
    int restHours,
    Turn fromAsFound,
    int movesWithoutAnswer,
    int movesInSlack,
    int movesWhileTouching,
    int wrongWayMoves,
    int stiffTurns,
    int settleMinutes,
    int retuneAfterMinutes,
    int readingHoldsMinutes,
    Set<Feel> stopFeels,
    Set<String> findingNeeded,
    Set<String> keptSlack,
    Set<Fact> turnNeeds,
    Set<Fact> tightenNeeds,
    Set<Fact> apartNeeds,
    List<String> turnHazards,
    Duration day,
    Turn mostReported,
    int putOff,
    Duration pause,
    Duration knownFor,
    Clocks clocks,
    double jumpMm,
    double creepShare,
    Answers answers,
    Climate climate,
    Rechecks rechecks) {
  public Limits {
    stopFeels = Set.copyOf(stopFeels);
    findingNeeded = Set.copyOf(findingNeeded);
    keptSlack = Set.copyOf(keptSlack);
    turnNeeds = Set.copyOf(turnNeeds);
    tightenNeeds = Set.copyOf(tightenNeeds);
    apartNeeds = Set.copyOf(apartNeeds);
    turnHazards = List.copyOf(turnHazards);
  }

  /**
   * The figures by which a move counts as an answer of the neck.
   *
   * @param seenMm a change of relief that can be told from the noise of a gauge
   * @param wrongMm the least that counts as a move the wrong way
   * @param farMm a reading this far outside what was expected is taken once more
   * @param expectedFrom the least turn of which an answer is expected
   */
  public record Answers(double seenMm, double wrongMm, double farMm, Turn expectedFrom) {}

  /**
   * The figures by which the air counts as another climate.
   *
   * @param after the time after which the climate counts as another, whatever the air was
   * @param points more than this of relative humidity
   */
  public record Climate(Duration after, double points) {
    /**
     * {@code text} with these figures in place of its blanks: "by more than {points}, or {time}
     * went by".
     */
    public String in(String text) {
      long days = after.toDays();
      String time = days == 7 ? "a week" : days < 2 ? after.toHours() + " h" : days + " days";
      return text.replace("{points}", Decimals.plain(points) + " points").replace("{time}", time);
    }
  }

  /**
   * How far a machine's clock may be off the record before it is not believed.
   *
   * @param behind the most that it may stand before the last record
   * @param gap the most that may have gone by without a record, where that ends a wait
   */
  public record Clocks(Duration behind, Duration gap) {
    /** The time of an event after one at {@code last}: now, or that where clocks may so differ. */
    public Instant after(Instant last, Instant now) {
      return now.isBefore(last) && !back(last, now) ? last : now;
    }

    /** Whether the clock was set back since {@code last}. */
    public boolean back(Instant last, Instant now) {
      return now.isBefore(last.minus(behind));
    }

    /** Whether hardly so much time went by. */
    public boolean leaps(Instant last, Instant now) {
      return Duration.between(last, now).compareTo(gap) > 0;
    }
  }

  /** How long the rod rests once a day's turning is used up. */
  public Duration rest() {
    return Duration.ofHours(restHours);
  }

  /**
   * When an instrument is looked at again.
   *
   * @param day after the rod was turned
   * @param week after the rod was turned, once more
   * @param season after any session
   * @param answeredAt the part of its time, as one in so many, from which on a reading answers one
   * @param ahead how long beforehand the home view shows one
   */
  public record Rechecks(
      Recheck day, Recheck week, Recheck season, int answeredAt, Duration ahead) {}

  /**
   * One time at which an instrument is looked at again.
   *
   * @param after how long after a session's end
   * @param procedure what is begun for it
   * @param due what is said of it in a list, one sentence
   * @param sheet what is said of it on the set-up sheet
   */
  public record Recheck(Duration after, String procedure, String due, String sheet) {}
}
