package quarterturn.reckon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.craft.Possible;
import quarterturn.craft.Scale;
import quarterturn.craft.Stiffness;
import quarterturn.craft.Tension;
import quarterturn.unit.Decimals;
import quarterturn.unit.Force;

/** {@code reckon stiffness}. */
@Command(
    addMethodSubcommands = false,
    name = "stiffness",
    description = "How much a string's stiffness spreads its partials.",
    footer = {
      "",
      "Give the string as --core with --unit-weight, as --plain, or as --wound with",
      "--core.",
      "JSON: inharmonicity_b."
    })
final class StiffnessTopic extends Topic {
  @Mixin private StringOptions options = new StringOptions();

  @Override
  Reckoned reckon() {
    Scale given = options.scale();
    StringOptions.Wire string = options.wire();
    Force pull = Tension.of(given, options.pitch(), string.weight());
    Stiffness stiffness = Stiffness.of(given.length(), pull, string.steel());
    return new Reckoned.Draft()
        .key("inharmonicity_b", stiffness.b())
        .within(Possible.STIFFNESS, stiffness.b())
        .within(Possible.PULL, pull.newtons())
        .say("B = %.3e for the open string, four times that at fret 12.".formatted(stiffness.b()))
        .say(
            "Partial 2 lies %s cents above twice the first, partial 5 %s and partial 10 %s."
                .formatted(
                    Decimals.print(stiffness.sharpness(2).cents(), 2),
                    Decimals.print(stiffness.sharpness(5).cents(), 2),
                    Decimals.print(stiffness.sharpness(10).cents(), 1)))
        .by(
            "f_n = n f0 sqrt(1 + B n^2), B = pi^3 E d^4 / (64 T L^2) for pinned ends (textbook)",
            "d is the core: a wrap adds mass and hardly any stiffness, so B is a lower bound for a"
                + " wound string. E = 205 GPa.");
  }
}
