package quarterturn.reckon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.craft.Scale;
import quarterturn.craft.Tension;
import quarterturn.unit.Force;
import quarterturn.unit.Frequency;
import quarterturn.unit.Note;
import quarterturn.unit.UnitWeight;

/** {@code reckon tension}. */
@Command(
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

  @Mixin private ScaleOption scale = new ScaleOption();

  @Option(names = "--note", required = true, paramLabel = "NOTE", description = "Such as E1.")
  private Note note = new Note(0);

  @Mixin private WireOptions wire = new WireOptions();
  @Mixin private TuningOptions tuning = new TuningOptions();

  @Override
  Reckoned reckon() {
    Scale given = scale.scale();
    UnitWeight weight = wire.weight();
    Frequency pitch = tuning.temperament().of(note);
    Force pull = Tension.of(given, pitch, weight);
    return new Reckoned.Draft()
        .key("newton", pull.newtons())
        .key("pound_force", pull.poundForce())
        .key("unit_weight_g_per_m", weight.gramsPerMetre())
        .say(
            "Tuned to %s (%s Hz) on %s it pulls %s N, %s lbf."
                .formatted(
                    note,
                    Given.digits(pitch.hertz(), 2),
                    given.length(),
                    Given.digits(pull.newtons(), 1),
                    Given.digits(pull.poundForce(), 2)))
        .say("It weighs " + Given.digits(weight.gramsPerMetre(), 3) + " g/m.")
        .by(FORMULA, WIRE);
  }
}
