package quarterturn.reckon;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.craft.Held;
import quarterturn.craft.Neck;
import quarterturn.craft.Possible;
import quarterturn.craft.Scale;
import quarterturn.craft.StringLine;
import quarterturn.unit.Decimals;

/** {@code reckon neck}. */
@Command(
    addMethodSubcommands = false,
    name = "neck",
    description = "The neck's curve, and the open string over it.",
    footer = {
      "",
      "JSON: curvature_per_mm, fret_top_mm (frets 0 to the last, 0 is the nut),",
      "saddle_mm, open_clearance_mm (frets 1 to the last), action12_per_relief."
    })
final class NeckTopic extends Topic {
  private static final int COLUMNS = 74;
  private static final int ROWS = 11;

  static final String FORMULA =
      "bending with the same curvature from nut to joint, y = kappa/2 (x_J - x)^2, tangent to the"
          + " body's plane at the joint; kappa from the gap under a chord";
  static final String ASSUMES =
      "small slopes, no hump, no twist, no rise at the body end; a string straight from its nut slot"
          + " to its saddle, which is fixed to the body.";

  @Mixin private ReliefOptions bow = new ReliefOptions();
  @Mixin private HeightOptions heights = new HeightOptions();
  @Mixin private LastFret lastFret = new LastFret();

  @Override
  Reckoned reckon() {
    Neck neck = bow.neck();
    Held held = bow.held();
    int last = lastFret.last(bow);
    StringLine line = heights.line(neck);
    double[] tops = new double[last + 1];
    double[] open = new double[last];
    for (int n = 0; n <= last; n++) {
      tops[n] = neck.fretTopMm(n);
      if (n > 0) {
        open[n - 1] = line.openMm(n);
      }
    }
    double gain = StringLine.actionPerRelief(neck, 12, held);
    Reckoned.Draft draft =
        heights
            .draft()
            .key("curvature_per_mm", neck.curvature())
            .key("fret_top_mm", tops)
            .key("saddle_mm", line.saddle().mm())
            .key("open_clearance_mm", open)
            .key("action12_per_relief", gain)
            .within(Possible.RELIEF, bow.relief().mm())
            .within(Possible.SADDLE, line.saddle().mm())
            .say(bend(neck, held))
            .say(
                "The saddle stands %s mm above the body's plane. Each 0.10 mm more of relief raises"
                        .formatted(Decimals.print(line.saddle().mm(), 2))
                    + " the action at fret 12 by %s mm, with saddle and nut left alone."
                        .formatted(Decimals.print(gain / 10, 2)));
    touches(open).forEach(draft::say);
    return draft
        .draw(profile(line, last))
        .draw(List.of("", "Open string above the frets, in mm:"))
        .draw(Columns.lines("fret", 1, open, 2))
        .by(FORMULA, ASSUMES);
  }

  private String bend(Neck neck, Held held) {
    String read = bow.relief() + " of relief (" + BowOptions.words(held) + ")";
    if (neck.curvature() == 0) {
      return read + " is a straight neck.";
    }
    return read
        + (neck.curvature() > 0 ? " is a forward bow" : " is a back bow")
        + " with a radius of "
        + Decimals.print(Math.abs(1 / neck.curvature()) / 1000, 1)
        + " m.";
  }

  /**
   * A sentence that names the first fret where the open string has a gap below zero; else empty.
   */
  private static List<String> touches(double[] open) {
    for (int n = 1; n <= open.length; n++) {
      if (open[n - 1] < 0) {
        return List.of(
            "At fret " + n + " and perhaps others the open string would lie on the fret.");
      }
    }
    return List.of();
  }

  /** Side view of the neck with the string over it, with the heights exaggerated. */
  private static List<String> profile(StringLine line, int last) {
    Neck neck = line.neck();
    Scale scale = neck.scale();
    double high = Math.max(line.saddle().mm(), neck.fretTopMm(0) + line.nutHeight().mm());
    double low = Math.min(0, neck.fretTopMm(0));
    double span = Math.max(high - low, 0.1);
    Sketch sketch = new Sketch(COLUMNS, ROWS + 1);
    double nut = neck.fretTopMm(0) + line.nutHeight().mm();
    for (int column = 0; column < COLUMNS; column++) {
      double x = scale.mm() * column / (COLUMNS - 1);
      double board = neck.heightMm(x);
      double string = nut + (line.saddle().mm() - nut) * x / scale.mm();
      if (x <= scale.fretMm(last)) {
        sketch.put(column, row(board, low, span), '_');
      }
      sketch.put(column, row(string, low, span), '-');
    }
    for (int n : new int[] {0, 1, 5, 12, neck.joint()}) {
      int column = (int) Math.round(scale.fretMm(n) / scale.mm() * (COLUMNS - 1));
      if (n <= last) {
        sketch.put(column, row(neck.fretTopMm(n), low, span), '|');
        sketch.write(column, ROWS, n == 0 ? "nut" : Integer.toString(n));
      }
    }
    sketch.write(COLUMNS - 6, ROWS, "saddle");
    List<String> lines = new ArrayList<>();
    lines.add(
        "From the side, heights drawn %s times too large; string -, fingerboard _:"
            .formatted(Decimals.print(2 * (ROWS - 1) / span * scale.mm() / (COLUMNS - 1), 0)));
    lines.addAll(sketch.lines(2));
    return lines;
  }

  private static int row(double height, double low, double span) {
    return (int) Math.round((ROWS - 1) * (1 - (height - low) / span));
  }
}
