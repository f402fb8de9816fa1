package quarterturn.reckon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.craft.Intonation;
import quarterturn.craft.Possible;
import quarterturn.craft.Scale;
import quarterturn.unit.Cents;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;

/** {@code reckon intonation}. */
@Command(
    addMethodSubcommands = false,
    name = "intonation",
    description = "How far the saddle must move for a fretted note to agree.",
    footer = {"", "JSON: saddle_travel_mm (plus is away from the nut), mm_per_cent."})
final class IntonationTopic extends Topic {
  @Mixin private ScaleOption scale = new ScaleOption();

  @Option(
      names = "--cents",
      required = true,
      paramLabel = "CENTS",
      description =
          "Fretted note less where it should be; plus is sharp. At fret 12: less harmonic.")
  private Cents cents = new Cents(0);

  @Option(names = "--fret", paramLabel = "FRET", description = "The fret; 12 unless given.")
  private int fret = 12;

  @Override
  Reckoned reckon() {
    Scale given = scale.scale();
    Checked.within("--fret", fret, 1, Scale.MOST_FRETS);
    Length travel = Checked.by("--cents", () -> Intonation.travel(given, fret, cents));
    double perCent = Intonation.mmPerCent(given, fret);
    return new Reckoned.Draft()
        .key("saddle_travel_mm", travel.mm())
        .key("mm_per_cent", perCent)
        .within(Possible.SADDLE_TRAVEL, travel.mm())
        .within(Possible.SCALE, given.mm())
        .say(move(travel))
        .say("Each cent is about " + Decimals.print(perCent, 2) + " mm of saddle.")
        .by(
            "saddle travel, d = L (s - 1) / (R - s), R = 2^(n/12), s = 2^(c/1200); at fret 12 that is"
                + " L (1 - q) / (2 q - 1), q = 2^(-c/1200)",
            "the open string is retuned after the move, and all that sharpens the note stays as it"
                + " is. Good for a few millimetres: move, retune, read again.");
  }

  private static String move(Length travel) {
    String size = Decimals.print(Math.abs(travel.mm()), 2);
    if (Double.parseDouble(size) == 0) {
      return "Leave the saddle where it is.";
    }
    return "Move the saddle "
        + size
        + " mm "
        + (travel.mm() > 0
            ? "away from the nut (the note is sharp)"
            : "toward the nut (the note is flat)")
        + ", retune, and read again.";
  }
}
