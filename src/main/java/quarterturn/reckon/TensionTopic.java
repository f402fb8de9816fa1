package quarterturn.reckon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.craft.Possible;
import quarterturn.craft.Scale;
import quarterturn.craft.Tension;
import quarterturn.unit.Decimals;
import quarterturn.unit.Force;
import quarterturn.unit.Frequency;
import quarterturn.unit.Length;
import quarterturn.unit.UnitWeight;

/** {@code reckon tension}. */
@Command(
    addMethodSubcommands = false,
    name = "tension",
    description = "The pull of one tuned string.",
    footer = {
      "",
      "Give the string as --unit-weight, as --plain, or as --wound with --core.",
      "JSON: newton, pound_force, unit_weight_g_per_m."
    })
final class TensionTopic extends Topic {
  static final String FORMULA = "T = 4 mu L^2 f^2, the first mode of an ideal string";
  static final String WIRE =
      "steel of 7850 kg/m3 (ASTM A228 music wire), a wrap of touching round turns of 8000 kg/m3"
          + " (an estimate). For flat or ground wraps weigh the string and give --unit-weight.";

  private static final String BREAKS =
      "It may well break: do not tune it so high, and keep your face away from it.";

  @Mixin private StringOptions options = new StringOptions();

  @Override
  Reckoned reckon() {
    Scale given = options.scale();
    UnitWeight weight = options.weight();
    Frequency pitch = options.pitch();
    Force pull = Tension.of(given, pitch, weight);
    Reckoned.Draft draft =
        new Reckoned.Draft()
            .key("newton", pull.newtons())
            .key("pound_force", pull.poundForce())
            .key("unit_weight_g_per_m", weight.gramsPerMetre())
            .say(
                "Tuned to %s (%s Hz) on %s it pulls %s N, %s lbf."
                    .formatted(
                        options.note(),
                        Decimals.print(pitch.hertz(), 2),
                        given.length(),
                        Decimals.print(pull.newtons(), 1),
                        Decimals.print(pull.poundForce(), 2)))
            .say("It weighs " + Decimals.print(weight.gramsPerMetre(), 3) + " g/m.");
    draft.within(Possible.PULL, pull.newtons()).within(Possible.SCALE, given.mm());
    Length steel = options.steel();
    if (steel != null) {
      double mpa = Tension.stressMpa(pull, steel);
      draft
          .doubtIf(mpa >= Tension.BREAKS_AT_MPA, BREAKS)
          .say(
              "Its steel carries %s MPa; music wire breaks at about %s."
                  .formatted(Decimals.print(mpa, 0), Decimals.print(Tension.BREAKS_AT_MPA, 0)));
    }
    return draft.by(FORMULA, WIRE);
  }
}
