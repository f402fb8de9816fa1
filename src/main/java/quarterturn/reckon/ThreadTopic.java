package quarterturn.reckon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.craft.Possible;
import quarterturn.craft.ScrewThread;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;
import quarterturn.unit.Turn;

/** {@code reckon thread}. */
@Command(
    addMethodSubcommands = false,
    name = "thread",
    description = "How far a screw moves.",
    footer = {"", "JSON: travel_mm."})
final class ThreadTopic extends Topic {
  @Option(
      names = "--thread",
      required = true,
      paramLabel = "THREAD",
      description = "Such as M3x0.5, 10-32 or 1/4-28.")
  private ScrewThread thread = new ScrewThread("none", Length.mm(1));

  @Option(
      names = "--turns",
      required = true,
      paramLabel = "TURNS",
      description = "Such as 1/4, 0.25 or 90deg; minus the other way, such as --turns=-1/8.")
  private Turn turns = Turn.NONE;

  @Override
  Reckoned reckon() {
    Length travel = thread.travel(turns);
    return new Reckoned.Draft()
        .key("travel_mm", travel.mm())
        .within(Possible.SCREW, travel.mm())
        .say(
            "%s of %s moves %s mm; its pitch is %s."
                .formatted(
                    turns.signed(), thread.name(), Decimals.print(travel.mm(), 3), thread.pitch()))
        .by(
            "travel = pitch * turns; metric pitches by ISO 261, unified ones 25.4 mm / threads per"
                + " inch (ASME B1.1)",
            "a single-start thread without slack. M5x0.8 and 10-32 start into each other: never"
                + " force a screw.");
  }
}
