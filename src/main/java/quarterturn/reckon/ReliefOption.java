package quarterturn.reckon;

import picocli.CommandLine.Option;
import quarterturn.unit.Length;

/** A relief that was read. */
final class ReliefOption {
  @Option(
      names = "--relief",
      required = true,
      paramLabel = "LENGTH",
      description = "The gap that was read; minus for back bow.")
  private Length relief = Length.mm(0);

  Length relief() {
    return relief;
  }
}
