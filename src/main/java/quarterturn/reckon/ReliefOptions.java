package quarterturn.reckon;

import picocli.CommandLine.Option;
import quarterturn.craft.Held;
import quarterturn.craft.Neck;
import quarterturn.craft.Scale;
import quarterturn.unit.Length;

/** The options for a neck whose relief was measured. */
final class ReliefOptions extends BowOptions {
  @Option(
      names = "--relief",
      required = true,
      paramLabel = "LENGTH",
      description = "The gap that was read; minus for back bow.")
  private Length relief = Length.mm(0);

  Length relief() {
    return relief;
  }

  /** The evenly bent neck that has the given relief. */
  Neck neck() {
    Scale along = scale();
    int fixed = joint();
    Held how = held();
    return Checked.by("--relief", () -> Neck.uniform(along, fixed, relief, how));
  }
}
