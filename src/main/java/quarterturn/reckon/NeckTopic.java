package quarterturn.reckon;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.craft.Held;
import quarterturn.craft.Neck;
import quarterturn.craft.StringLine;
import quarterturn.unit.Decimals;

/** {@code reckon neck}. */
@Command(
    name = "neck",
    description = "The neck's curve, and the open string over it.",
    footer = {
      "",
      "JSON: curvature_per_mm, fret_top_mm (frets 0 to the last, 0 is the nut),",
      "saddle_mm, open_clearance_mm (frets 1 to the last), action12_per_relief."
    })
final class NeckTopic extends Topic {
  static final String FORMULA =
      "bending with the same curvature from nut to joint, y = kappa/2 (x_J - x)^2, tangent to the"
          + " body's plane at the joint; kappa from the gap under a chord";
  static final String ASSUMES =
      "small slopes, no hump, no twist, no rise at the body end; a string straight from its nut slot"
          + " to its saddle, which is fixed to the body.";

  @Mixin private BowOptions bow = new BowOptions();
  @Mixin private ReliefOption relief = new ReliefOption();
  @Mixin private HeightOptions heights = new HeightOptions();
  @Mixin private LastFret lastFret = new LastFret();

  @Override
  Reckoned reckon() {
    Neck neck = bow.neck(relief.relief());
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
        new Reckoned.Draft()
            .key("curvature_per_mm", neck.curvature())
            .key("fret_top_mm", tops)
            .key("saddle_mm", line.saddle().mm())
            .key("open_clearance_mm", open)
            .key("action12_per_relief", gain)
            .say(bend(neck, held))
            .say(
                "The saddle stands %s mm above the body's plane. Each 0.10 mm more of relief raises"
                        .formatted(Decimals.print(line.saddle().mm(), 2))
                    + " the action at fret 12 by %s mm, with saddle and nut left alone."
                        .formatted(Decimals.print(gain / 10, 2)));
    touches(open).forEach(draft::say);
    return draft
        .draw(Profile.lines(line, last))
        .draw(List.of("", "Open string above the frets, in mm:"))
        .draw(Columns.lines("fret", 1, open, 2))
        .by(FORMULA, ASSUMES);
  }

  private String bend(Neck neck, Held held) {
    String read = relief.relief() + " of relief (" + BowOptions.words(held) + ")";
    if (neck.curvature() == 0) {
      return read + " is a straight neck.";
    }
    return read
        + (neck.curvature() > 0 ? " is a forward bow" : " is a back bow")
        + " with a radius of "
        + Decimals.print(Math.abs(1 / neck.curvature()) / 1000, 1)
        + " m.";
  }

  /** A gap can't be negative: the string lies on the frets. */
  private static List<String> touches(double[] open) {
    for (int n = 1; n <= open.length; n++) {
      if (open[n - 1] < 0) {
        return List.of(
            "At fret " + n + " and perhaps others the open string would lie on the fret.");
      }
    }
    return List.of();
  }
}
