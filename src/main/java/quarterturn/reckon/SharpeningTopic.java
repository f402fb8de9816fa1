package quarterturn.reckon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.craft.Possible;
import quarterturn.craft.Scale;
import quarterturn.craft.Sharpening;
import quarterturn.craft.Tension;
import quarterturn.unit.Cents;
import quarterturn.unit.Decimals;
import quarterturn.unit.Force;
import quarterturn.unit.Length;

/** {@code reckon sharpening}. */
@Command(
    addMethodSubcommands = false,
    name = "sharpening",
    description = "How much pressing the string sharpens it.",
    footer = {
      "",
      "Give the string as --core with --unit-weight, as --plain, or as --wound with",
      "--core.",
      "JSON: cents."
    })
final class SharpeningTopic extends Topic {
  @Mixin private StringOptions options = new StringOptions();
  @Mixin private HeightOptions heights = new HeightOptions();

  @Option(
      names = "--fret",
      required = true,
      paramLabel = "FRET",
      description = "Where it is pressed.")
  private int fret;

  @Option(
      names = "--press-behind",
      paramLabel = "LENGTH",
      description = "How far below the fret tops the finger pushes the string; 0 unless given.")
  private Length behind = Length.mm(0);

  @Override
  Reckoned reckon() {
    Scale given = options.scale();
    Checked.within("--fret", fret, 1, Scale.MOST_FRETS);
    Checked.from0("--press-behind", behind);
    StringOptions.Wire string = options.wire();
    Force pull = Tension.of(given, options.pitch(), string.weight());
    Cents sharp =
        Sharpening.of(given, pull, string.steel(), heights.nut(), heights.action(), fret, behind);
    return heights
        .draft()
        .key("cents", sharp.cents())
        .within(Possible.SHARPENING, sharp.cents())
        .within(Possible.PULL, pull.newtons())
        .say(
            "Pressed at fret %d the note is %s cents sharp by stretch."
                .formatted(fret, Decimals.print(sharp.cents(), 2)))
        .by(
            "stretch of the bent string, cents = 1200 log2 sqrt(1 + EA e / T), EA of the core",
            "a straight neck, E = 205 GPa, a string that slides freely over nut and saddle, a finger"
                + " 10 mm behind the fret or in the middle of its space, whichever is nearer."
                + " Stiffness and the saddle's place come on top.");
  }
}
