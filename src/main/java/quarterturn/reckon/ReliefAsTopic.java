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
    name = "relief-as",
    description = "The same bow, read another way.",
    footer = {"", "JSON: relief_mm."})
final class ReliefAsTopic extends Topic {
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
                    Decimals.print(read.mm(), digits(read, bow.relief())),
                    BowOptions.words(other)))
        .by(NeckTopic.FORMULA, NeckTopic.ASSUMES);
  }

  /** As many decimals as give the first reading again, to a thousandth, when they are typed. */
  private static int digits(Length read, Length first) {
    double back = read.mm() == 0 ? 0 : Math.abs(first.mm() / read.mm());
    return back > 1 ? 3 + (int) Math.ceil(Math.log10(back)) : 3;
  }
}
