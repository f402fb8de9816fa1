package quarterturn.procedure.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import quarterturn.procedure.Slip;
import quarterturn.procedure.check.rule.CannotProve;
import quarterturn.procedure.check.rule.ClosedToOne;
import quarterturn.procedure.check.rule.DoneBlind;
import quarterturn.procedure.check.rule.DoubtfulFact;
import quarterturn.procedure.check.rule.EarlyReading;
import quarterturn.procedure.check.rule.EndlessLoop;
import quarterturn.procedure.check.rule.IdleBranch;
import quarterturn.procedure.check.rule.LeftApart;
import quarterturn.procedure.check.rule.MissingHazard;
import quarterturn.procedure.check.rule.MissingQuestion;
import quarterturn.procedure.check.rule.NoEnd;
import quarterturn.procedure.check.rule.NotAsExpected;
import quarterturn.procedure.check.rule.OpenBranches;
import quarterturn.procedure.check.rule.OpenOutcomes;
import quarterturn.procedure.check.rule.OverlappingBranches;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.rule.SkippedStep;
import quarterturn.procedure.check.rule.SkippedWait;
import quarterturn.procedure.check.rule.StaleReading;
import quarterturn.procedure.check.rule.StrayHazard;
import quarterturn.procedure.check.rule.TurnAfterDamage;
import quarterturn.procedure.check.rule.TwoActions;
import quarterturn.procedure.check.rule.UncountedReading;
import quarterturn.procedure.check.rule.UnderPull;
import quarterturn.procedure.check.rule.UnknownOutcome;
import quarterturn.procedure.check.rule.UnreachableStep;
import quarterturn.procedure.check.rule.WhichString;
import quarterturn.procedure.check.rule.WrongShortcut;
import quarterturn.procedure.check.rule.text.ActInWords;
import quarterturn.procedure.check.rule.text.DirectionWords;
import quarterturn.procedure.check.rule.text.ForcedNut;
import quarterturn.procedure.check.rule.text.RepairersWork;
import quarterturn.procedure.check.rule.text.TalkedAway;
import quarterturn.procedure.check.rule.text.UnitInWords;
import quarterturn.procedure.check.rule.turn.OrderedTurn;
import quarterturn.procedure.check.rule.turn.OverLimit;
import quarterturn.procedure.check.rule.turn.StopWords;
import quarterturn.procedure.check.rule.turn.TurnAfterStop;
import quarterturn.procedure.check.rule.turn.TurnAfterTurn;
import quarterturn.procedure.check.rule.turn.TurnDay;
import quarterturn.procedure.check.rule.turn.TurnDetuned;
import quarterturn.procedure.check.rule.turn.TurnDirection;
import quarterturn.procedure.check.rule.turn.TurnHazards;
import quarterturn.procedure.check.rule.turn.TurnNeeds;
import quarterturn.procedure.check.rule.turn.TurnReading;
import quarterturn.procedure.check.rule.turn.TurnWords;

/** All the rules, in the order in which they are explained. */
final class Rules {
  /** The rules decided while a file is read. */
  private static final List<Rule> READ =
      List.of(
          Rule.read(
              Slip.NOT_YAML,
              "A file is UTF-8 text in plain YAML: one document, each key once, no tags,"
                  + " anchors or aliases."),
          Rule.read(
              Slip.CONTROL_CHARACTER,
              "Every character of a file can be shown; none is lost, and none drives a terminal."),
          Rule.read(Slip.UNKNOWN_KEY, "Every key is one that may stand in its place."),
          Rule.read(Slip.MISSING_KEY, "Every key that must stand in a place stands there."),
          Rule.read(
              Slip.UNKNOWN_WORD,
              "Kinds of step, facts, hazards, pictures, quantities and the like are words that"
                  + " the program knows."),
          Rule.read(
              Slip.UNKNOWN_ID,
              "Every step, option, procedure, change and result that is named exists."),
          Rule.read(
              Slip.BAD_ID,
              "An id is made of a to z, 0 to 9 and -, and no two things of one kind share theirs."),
          Rule.read(
              Slip.BAD_VALUE,
              "A value is of the kind, the size and the unit that its key takes; every amount"
                  + " has its unit."),
          Rule.read(
              Slip.BAD_BLANK,
              "A blank in braces is one that the program can fill in, in a text where it does so."),
          Rule.read(
              Slip.BAD_CONDITION,
              "A condition is made of the words that the program can judge, with amounts in"
                  + " their units."),
          Rule.read(
              Slip.WAY_ON,
              "A step goes on to the one below it, or says another way, once: by go, or by branches."),
          Rule.read(Slip.CALL_CIRCLE, "No procedure calls itself, nor one that leads back to it."),
          Rule.read(
              Slip.NO_BEGINNER_TEXT,
              "A step with a technician's wording has the beginner's text as well."));

  /** The rules proven of a file that could be read. */
  private static final List<Rule> PROVEN =
      List.of(
          OpenBranches.RULE,
          OverlappingBranches.RULE,
          IdleBranch.RULE,
          UnreachableStep.RULE,
          NoEnd.RULE,
          EndlessLoop.RULE,
          EarlyReading.RULE,
          StaleReading.RULE,
          UncountedReading.RULE,
          UnderPull.RULE,
          WhichString.RULE,
          UnitInWords.RULE,
          TurnHazards.RULE,
          TurnNeeds.RULE,
          TurnReading.RULE,
          TurnDirection.RULE,
          TurnDetuned.RULE,
          TurnAfterTurn.RULE,
          TurnAfterStop.RULE,
          StopWords.RULE,
          TurnAfterDamage.RULE,
          ForcedNut.RULE,
          DirectionWords.RULE,
          DoubtfulFact.RULE,
          TurnDay.RULE,
          OverLimit.RULE,
          OrderedTurn.RULE,
          TurnWords.RULE,
          DoneBlind.RULE,
          ClosedToOne.RULE,
          SkippedWait.RULE,
          SkippedStep.RULE,
          WrongShortcut.RULE,
          MissingHazard.RULE,
          StrayHazard.RULE,
          TwoActions.RULE,
          ActInWords.RULE,
          RepairersWork.RULE,
          TalkedAway.RULE,
          MissingQuestion.RULE,
          LeftApart.RULE,
          NotAsExpected.RULE,
          UnknownOutcome.RULE,
          OpenOutcomes.RULE,
          CannotProve.RULE);

  static final List<Rule> ALL = Stream.of(READ, PROVEN).flatMap(List::stream).toList();

  private Rules() {}

  /**
   * The rules that a procedure is held to.
   *
   * @param tightened whether it was written for laxer limits: then some of its ways may be closed
   */
  static Stream<Rule> of(boolean tightened) {
    Set<Rule> closed = tightened ? Set.of(IdleBranch.RULE, UnreachableStep.RULE) : Set.of();
    return ALL.stream().filter(rule -> !closed.contains(rule));
  }
}
