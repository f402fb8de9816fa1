package quarterturn.procedure;

import java.util.List;
import java.util.Set;
import quarterturn.unit.Turn;

/**
 * The limits the engine enforces, whatever a procedure file says. Read from {@code
 * safety/limits.yaml}.
 *
 * @param perReading most rod turn between two readings
 * @param firstMove most on a neck whose answer is not known
 * @param beginnerDay most a beginner may turn, either way added up, in 24 hours
 * @param restHours how long the rod rests after that
 * @param fromAsFound most the rod may stand from where it was found
 * @param movesWithoutAnswer turns in a row without an answer before handing over
 * @param movesWhileTouching the same while the string touches, where no answer could be seen
 * @param wrongWayMoves turns that moved the neck the wrong way before handing over
 * @param settleMinutes least time between retuning and a reading that counts
 * @param retuneAfterMinutes a break after which the strings must be tuned again before a reading
 * @param readingHoldsMinutes how long tuning holds for a reading, and a reading for a turn
 * @param stopFeels feels after which the rod is not turned again
 * @param turnNeeds what must be true of every turn
 * @param tightenNeeds what must be true before tightening
 * @param turnHazards ids of the hazards shown before every rod turn
 */
public record Limits(
    Turn perReading,
    Turn firstMove,
    Turn beginnerDay,
    int restHours,
    Turn fromAsFound,
    int movesWithoutAnswer,
    int movesWhileTouching,
    int wrongWayMoves,
    int settleMinutes,
    int retuneAfterMinutes,
    int readingHoldsMinutes,
    Set<Feel> stopFeels,
    Set<Fact> turnNeeds,
    Set<Fact> tightenNeeds,
    List<String> turnHazards) {
  public Limits {
    stopFeels = Set.copyOf(stopFeels);
    turnNeeds = Set.copyOf(turnNeeds);
    tightenNeeds = Set.copyOf(tightenNeeds);
    turnHazards = List.copyOf(turnHazards);
  }
}
