package quarterturn.reckon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.craft.Held;
import quarterturn.craft.Neck;
import quarterturn.craft.Possible;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;

/** {@code reckon relief-as}. */
@Command(
    addMethodSubcommands = false,
    name = "relief-as",
    description = "The same bow, read another way.",
    footer = {"", "JSON: relief_mm."})
final class ReliefAsTopic extends Topic {
  /** What a reading may be off, converted and back, in millimetres. */
  private static final double SAME_MM = 2e-4;

  @Mixin private ReliefOptions bow = new ReliefOptions();

  @Option(
      names = "--to-held",
      required = true,
      paramLabel = "FRET",
      description = "The fret held beside fret 1 in the other way of reading.")
  private int toHeld;

  @Option(
      names = "--to-read-at",
      required = true,
      paramLabel = "FRET",
      description = "The fret over which the gap is read in the other way.")
  private int toReadAt;

  @Override
  Reckoned reckon() {
    Neck neck = bow.neck();
    Held other = BowOptions.held(toHeld, toReadAt, "--to-held", "--to-read-at");
    Checked.within("--to-read-at", toReadAt, 2, bow.joint() - 1);
    Length read = neck.relief(other);
    return new Reckoned.Draft()
        .key("relief_mm", read.mm())
        .within(Possible.RELIEF, bow.relief().mm())
        .within(Possible.RELIEF, read.mm())
        .say(
            "%s %s would read %s mm %s."
                .formatted(
                    bow.relief(),
                    BowOptions.words(bow.held()),
                    typed(read, bow.relief()),
                    BowOptions.words(other)))
        .by(NeckTopic.FORMULA, NeckTopic.ASSUMES);
  }

  /** As many decimals as give the first reading again when they are typed. */
  private static String typed(Length read, Length first) {
    int decimals = 3;
    String text = Decimals.print(read.mm(), decimals);
    while (Math.abs(Double.parseDouble(text) / read.mm() - 1) * Math.abs(first.mm()) > SAME_MM) {
      decimals++;
      text = Decimals.print(read.mm(), decimals);
    }
    return text;
  }
}
