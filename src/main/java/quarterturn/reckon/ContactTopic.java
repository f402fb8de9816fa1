package quarterturn.reckon;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.craft.ContactMap;
import quarterturn.craft.Neck;
import quarterturn.report.ContactDrawing;
import quarterturn.unit.Decimals;

/** {@code reckon contact}. */
@Command(
    name = "contact",
    description = "Where a stroke makes the string strike the frets.",
    footer = {
      "",
      "JSON: margin_mm, a row for each stopped fret 1 to the last, in it a value for",
      "each fret 1 to the last, null up to the stopped one; least_margin_mm,",
      "stopped_at, over_fret."
    })
final class ContactTopic extends Topic {
  static final String FORMULA =
      "clearance less the depth of a plucked ideal string, which stays within the parallelogram of"
          + " its triangle, a = F d (l - d) / (T l), and that one's reflection (d'Alembert)";

  @Mixin private ReliefOptions bow = new ReliefOptions();
  @Mixin private HeightOptions heights = new HeightOptions();
  @Mixin private StrokeOptions stroke = new StrokeOptions();
  @Mixin private LastFret lastFret = new LastFret();

  @Override
  Reckoned reckon() {
    Neck neck = bow.neck();
    int last = lastFret.last(bow);
    ContactMap map =
        ContactMap.of(heights.line(neck), stroke.tension(), stroke.pluck(neck.scale(), last), last);
    List<double[]> rows = new ArrayList<>();
    for (int k = 1; k <= last; k++) {
      double[] row = new double[last];
      for (int n = 1; n <= last; n++) {
        row[n - 1] = n > k ? map.marginMm(k, n) : Double.NaN;
      }
      rows.add(row);
    }
    return new Reckoned.Draft()
        .key("margin_mm", rows)
        .key("least_margin_mm", map.leastMm())
        .key("stopped_at", map.stoppedAt())
        .key("over_fret", map.overFret())
        .say(verdict(map))
        .draw(ContactDrawing.lines(map, 1))
        .by(FORMULA, StrokeOptions.ASSUMES);
  }

  private static String verdict(ContactMap map) {
    String where = ", stopped at fret %d, over fret %d.".formatted(map.stoppedAt(), map.overFret());
    String size = Decimals.print(Math.abs(map.leastMm()), 2) + " mm";
    return map.leastMm() < 0
        ? "It strikes. Deepest by " + size + where
        : "It clears every fret. Nearest by " + size + where;
  }
}
