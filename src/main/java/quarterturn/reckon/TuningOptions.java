package quarterturn.reckon;

import picocli.CommandLine.Option;
import quarterturn.craft.Temperament;
import quarterturn.unit.Frequency;

/** The standard tuning frequency. */
final class TuningOptions {
  @Option(
      names = "--a4",
      paramLabel = "HZ",
      description = "Frequency of A4; 440 Hz (ISO 16) unless given.")
  private Frequency a4 = Temperament.ISO_16.a4();

  Temperament temperament() {
    return new Temperament(a4);
  }
}
