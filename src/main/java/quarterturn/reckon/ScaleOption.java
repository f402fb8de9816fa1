package quarterturn.reckon;

import picocli.CommandLine.Option;
import quarterturn.craft.Scale;
import quarterturn.unit.Length;

/** The scale length. */
final class ScaleOption {
  @Option(
      names = "--scale",
      required = true,
      paramLabel = "LENGTH",
      description = "Scale length, such as 34in or 863.6mm.")
  private Length scale = Length.mm(0);

  Scale scale() {
    return Checked.by("--scale", () -> new Scale(scale));
  }
}
