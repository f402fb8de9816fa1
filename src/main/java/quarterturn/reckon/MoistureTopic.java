package quarterturn.reckon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.craft.Shrinkage;
import quarterturn.craft.WoodMoisture;
import quarterturn.unit.Decimals;
import quarterturn.unit.Humidity;
import quarterturn.unit.Length;
import quarterturn.unit.Temperature;

/** {@code reckon moisture}. */
@Command(
    addMethodSubcommands = false,
    name = "moisture",
    description = "The moisture that wood comes to in this air.",
    footer = {"", "JSON: emc_percent."})
final class MoistureTopic extends Topic {
  private static final Length NECK_WIDTH = Length.mm(50);

  @Option(
      names = "--temperature",
      required = true,
      paramLabel = "T",
      description = "Such as 21C or 70F.")
  private Temperature temperature = new Temperature(0);

  @Option(
      names = "--humidity",
      required = true,
      paramLabel = "RH",
      description = "Relative humidity, such as 45 or 45%%.")
  private Humidity humidity = new Humidity(0);

  @Override
  Reckoned reckon() {
    double percent = Checked.by("--temperature", () -> WoodMoisture.percent(temperature, humidity));
    return new Reckoned.Draft()
        .key("emc_percent", percent)
        .say(
            "Wood comes to %s %% of moisture at %s C and %s."
                .formatted(
                    Decimals.print(percent, 1), Decimals.print(temperature.celsius(), 1), humidity))
        .say(
            "For each point more, a maple board %s wide grows by %s mm if it is flat-sawn, %s mm if"
                    .formatted(
                        NECK_WIDTH,
                        Decimals.print(Shrinkage.SUGAR_MAPLE.tangentialMm(NECK_WIDTH, 1), 2),
                        Decimals.print(Shrinkage.SUGAR_MAPLE.radialMm(NECK_WIDTH, 1), 2))
                + " it is quarter-sawn. Which way a neck bends with it is its own: measure.")
        .by(
            "equilibrium moisture content, Wood Handbook (USDA FPL-GTR-282) equation 4-5; width by"
                + " its Table 13-5",
            "wood in general, about one point either way by species, after weeks in still air.");
  }
}
