package quarterturn.procedure.check;

import java.util.List;

/** All the rules, in the order in which they are explained. */
final class Rules {
  /** First those that are decided while a file is read, then those that are proven. */
  static final List<Rule> ALL =
      List.of(
          NotYaml.RULE,
          ControlCharacter.RULE,
          UnknownKey.RULE,
          MissingKey.RULE,
          UnknownWord.RULE,
          UnknownId.RULE,
          BadId.RULE,
          BadValue.RULE,
          BadBlank.RULE,
          BadCondition.RULE,
          WayOn.RULE,
          CallCircle.RULE,
          NoBeginnerText.RULE,
          OpenBranches.RULE,
          OverlappingBranches.RULE,
          IdleBranch.RULE,
          LeftOver.RULE,
          UnreachableStep.RULE,
          NoEnd.RULE,
          EndlessLoop.RULE,
          EarlyReading.RULE,
          StaleReading.RULE,
          UncountedReading.RULE,
          TurnHazards.RULE,
          TurnNeeds.RULE,
          TurnReading.RULE,
          TurnDirection.RULE,
          TurnDetuned.RULE,
          TurnAfterTurn.RULE,
          TurnDay.RULE,
          OverLimit.RULE,
          SkippedWait.RULE,
          SkippedStep.RULE,
          WrongShortcut.RULE,
          MissingHazard.RULE,
          StrayHazard.RULE,
          TwoActions.RULE,
          MissingQuestion.RULE,
          LeftApart.RULE,
          NotAsExpected.RULE,
          UnknownOutcome.RULE,
          CannotProve.RULE);

  private Rules() {}
}
