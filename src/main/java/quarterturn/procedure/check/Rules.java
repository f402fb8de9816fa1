package quarterturn.procedure.check;

import java.util.List;
import java.util.stream.Stream;

/** All the rules, in the order in which they are explained. */
public final class Rules {
  /** Those that are decided once everything was read. */
  static final List<Proving> PROVEN =
      List.of(
          new OpenBranches(),
          new OverlappingBranches(),
          new IdleBranch(),
          new LeftOver(),
          new UnreachableStep(),
          new NoEnd(),
          new EndlessLoop(),
          new EarlyReading(),
          new StaleReading(),
          new UncountedReading(),
          new TurnHazards(),
          new TurnNeeds(),
          new TurnReading(),
          new TurnDirection(),
          new TurnDetuned(),
          new TurnAfterTurn(),
          new TurnDay(),
          new OverLimit(),
          new SkippedWait(),
          new SkippedStep(),
          new WrongShortcut(),
          new MissingHazard(),
          new StrayHazard(),
          new TwoActions(),
          new MissingQuestion(),
          new LeftApart(),
          new NotAsExpected(),
          new UnknownOutcome(),
          new CannotProve());

  /** Those that are decided while a file is read. */
  private static final List<Rule> READ =
      List.of(
          new NotYaml(),
          new ControlCharacter(),
          new UnknownKey(),
          new MissingKey(),
          new UnknownWord(),
          new UnknownId(),
          new BadId(),
          new BadValue(),
          new BadBlank(),
          new BadCondition(),
          new WayOn(),
          new CallCircle(),
          new NoBeginnerText());

  /** Every rule there is. */
  public static final List<Rule> ALL = Stream.<Rule>concat(READ.stream(), PROVEN.stream()).toList();

  private Rules() {}
}
