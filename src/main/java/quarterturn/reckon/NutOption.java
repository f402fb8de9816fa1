package quarterturn.reckon;

import picocli.CommandLine.Option;
import quarterturn.unit.Length;

/** How high a string lies in its nut slot. */
final class NutOption {
  @Option(
      names = "--nut-height",
      required = true,
      paramLabel = "LENGTH",
      description = "Bottom of the nut slot above the plane of the fret tops.")
  private Length nut = Length.mm(0);

  Length height() {
    return Checked.from0("--nut-height", nut);
  }
}
