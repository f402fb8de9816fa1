package quarterturn.reckon;

import picocli.CommandLine.Option;
import quarterturn.craft.Neck;
import quarterturn.craft.StringLine;
import quarterturn.unit.Length;

/** How high a string stands at the nut and at fret 12. */
final class HeightOptions {
  @Option(
      names = "--nut-height",
      required = true,
      paramLabel = "LENGTH",
      description = "Bottom of the nut slot above the plane of the fret tops.")
  private Length nut = Length.mm(0);

  @Option(
      names = "--action12",
      required = true,
      paramLabel = "LENGTH",
      description = "Open string above fret 12.")
  private Length action = Length.mm(0);

  Length nut() {
    return Given.from0("--nut-height", nut);
  }

  Length action() {
    return Given.from0("--action12", action);
  }

  StringLine line(Neck neck) {
    return StringLine.withAction(neck, nut(), 12, action());
  }
}
