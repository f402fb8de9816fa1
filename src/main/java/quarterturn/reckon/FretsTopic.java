package quarterturn.reckon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.craft.FannedFrets;
import quarterturn.craft.Possible;
import quarterturn.craft.Scale;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** {@code reckon frets}. */
@Command(
    addMethodSubcommands = false,
    name = "frets",
    description = "Where the frets stand, from the nut.",
    footer = {
      "",
      "JSON: from_nut_mm, an array of frets 1 to N. Fanned: one such array a string,",
      "bass side first; offset_mm, one a string of frets 0 (the nut) to N, from the",
      "square fret, plus toward the saddle; slant_mm of frets 0 to N, plus where the",
      "treble end lies nearer to the saddle; slant_degrees, null without --spread."
    })
final class FretsTopic extends Topic {
  private static final String FORMULA =
      "twelve-tone equal temperament, x = L (1 - 2^(-n/12)) from the nut";
  private static final int RULER = 72;

  @Option(
      names = "--scale",
      paramLabel = "LENGTH",
      description = "Scale length, such as 34in or 863.6mm.")
  private @Nullable Length scale;

  @Option(names = "--frets", required = true, paramLabel = "N", description = "How many frets.")
  private int frets;

  @Option(names = "--scale-bass", paramLabel = "LENGTH", description = "Fanned: the first string.")
  private @Nullable Length bass;

  @Option(names = "--scale-treble", paramLabel = "LENGTH", description = "Fanned: the last string.")
  private @Nullable Length treble;

  @Option(names = "--strings", paramLabel = "N", description = "Fanned: how many strings.")
  private @Nullable Integer strings;

  @Option(
      names = "--square-fret",
      paramLabel = "FRET",
      description = "Fanned: the fret square to the strings; 0 is the nut.")
  private @Nullable Integer square;

  @Option(
      names = "--spread",
      paramLabel = "LENGTH",
      description = "Fanned: from the first to the last string, across; for the slant in degrees.")
  private @Nullable Length spread;

  @Override
  Reckoned reckon() {
    Checked.within("--frets", frets, 1, Scale.MOST_FRETS);
    boolean fanned = Stream.of(bass, treble, strings, square, spread).anyMatch(Objects::nonNull);
    Length one = scale;
    if (fanned && one != null) {
      throw new NotUnderstoodException(
          "--scale: contradicts the options of fanned frets; give either --scale, or --scale-bass,"
              + " --scale-treble, --strings and --square-fret");
    }
    if (fanned) {
      return fanned();
    }
    if (one == null) {
      throw new NotUnderstoodException(
          "--scale: is missing (for fanned frets, --scale-bass and its like)");
    }
    return even(Checked.by("--scale", () -> new Scale(one)));
  }

  private Reckoned even(Scale given) {
    double[] places = given.fretsMm(frets);
    return new Reckoned.Draft()
        .key("from_nut_mm", places)
        .within(Possible.SCALE, given.mm())
        .say("Frets of a " + given.length() + " scale, from the nut's edge, in mm:")
        .draw(Columns.lines("fret", 1, places, 3))
        .draw(ruler(given))
        .by(
            FORMULA,
            "the string ends at the nut's edge and at twice the way to fret 12; the saddle is set"
                + " back later, by ear or by reckon intonation.");
  }

  private Reckoned fanned() {
    if (bass == null || treble == null || strings == null || square == null) {
      throw new NotUnderstoodException(
          "fanned frets need all of --scale-bass, --scale-treble, --strings and --square-fret");
    }
    Length low = Checked.above0("--scale-bass", bass);
    Length high = Checked.above0("--scale-treble", treble);
    int count = Checked.within("--strings", strings, 2, 24);
    int fret = Checked.within("--square-fret", square, 0, frets);
    FannedFrets board = new FannedFrets(low, high, count);
    List<double[]> places = new ArrayList<>();
    List<double[]> offsets = new ArrayList<>();
    double[] slants = new double[frets + 1];
    Arrays.setAll(slants, n -> board.slantMm(n, fret));
    Length across = spread == null ? null : Checked.above0("--spread", spread);
    double[] degrees = across == null ? null : FannedFrets.slantDegrees(slants, across);
    Reckoned.Draft draft =
        new Reckoned.Draft()
            .key("from_nut_mm", places)
            .key("offset_mm", offsets)
            .key("slant_mm", slants)
            .key("slant_degrees", degrees)
            .within(Possible.SCALE, low.mm())
            .within(Possible.SCALE, high.mm())
            .say(
                "Along each string, from its own end at the nut, in mm; at fret "
                    + fret
                    + " the strings stand side by side.");
    for (int string = 1; string <= count; string++) {
      Scale own = board.scale(string);
      double[] row = own.fretsMm(frets);
      int one = string;
      double[] offset = new double[frets + 1];
      Arrays.setAll(offset, n -> board.offsetMm(one, n, fret));
      places.add(row);
      offsets.add(offset);
      draft.draw(List.of("", "string " + string + " (scale " + own.length() + ")"));
      draft.draw(Columns.lines("fret", 1, row, 3));
    }
    draft.draw(slanted(fret, offsets.get(0), offsets.get(count - 1), slants, degrees));
    return draft.by(
        FORMULA + ", each string with its own L, from bass to treble in even steps",
        "parallel strings; relief and action of each string go by its own scale.");
  }

  /** Each fret against the square one: where its ends lie along the strings, and how it slants. */
  private static List<String> slanted(
      int square, double[] bass, double[] treble, double[] slant, double @Nullable [] degrees) {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add(
        "From fret "
            + square
            + ", plus toward the saddle; slant is treble end less bass end, in mm:");
    lines.add("           bass end  treble end      slant" + (degrees == null ? "" : "   degrees"));
    for (int n = 0; n < slant.length; n++) {
      lines.add(
          "  %-7s %9s   %9s  %9s%s"
              .formatted(
                  n == 0 ? "nut" : "fret " + n,
                  Decimals.print(bass[n], 3),
                  Decimals.print(treble[n], 3),
                  Decimals.print(slant[n], 3),
                  degrees == null ? "" : "%10s".formatted(Decimals.print(degrees[n], 2))));
    }
    return lines;
  }

  /** The board from nut to last fret, to scale. */
  private List<String> ruler(Scale given) {
    Sketch sketch = new Sketch(RULER + 4, 2);
    double last = given.fretMm(frets);
    for (int n = 0; n <= frets; n++) {
      int column = (int) Math.round(given.fretMm(n) / last * RULER);
      sketch.put(column, 0, '|');
      if (n == 0 || n == frets || n == 12 || (n % 2 == 1 && n < 10)) {
        sketch.write(column, 1, Integer.toString(n));
      }
    }
    List<String> lines = new ArrayList<>(List.of(""));
    lines.addAll(sketch.lines(2));
    return lines;
  }
}
