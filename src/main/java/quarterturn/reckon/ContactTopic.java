package quarterturn.reckon;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.craft.ContactMap;
import quarterturn.craft.Neck;
import quarterturn.craft.Pluck;
import quarterturn.craft.Possible;
import quarterturn.report.ContactDrawing;
import quarterturn.unit.Decimals;

/** {@code reckon contact}. */
@Command(
    addMethodSubcommands = false,
    name = "contact",
    description = "Where a stroke makes the string strike the frets.",
    footer = {
      "",
      "JSON: stroke (pushed or pulled); open_margin_mm, of the open string over each",
      "fret 1 to the last; margin_mm, a row for each stopped fret 1 to the last, in it",
      "a value for each fret 1 to the last, null up to the stopped one;",
      "least_margin_mm, stopped_at (0 for the open string), over_fret; rests_on, the",
      "first fret on which the string lies without a stroke, or null."
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
    Pluck pluck = stroke.pluck(neck.scale(), last);
    ContactMap map = ContactMap.of(heights.line(neck), stroke.tension(), pluck, last);
    double[] open = IntStream.rangeClosed(1, last).mapToDouble(n -> map.marginMm(0, n)).toArray();
    List<double[]> rows = new ArrayList<>();
    for (int k = 1; k <= last; k++) {
      double[] row = new double[last];
      for (int n = 1; n <= last; n++) {
        row[n - 1] = n > k ? map.marginMm(k, n) : Double.NaN;
      }
      rows.add(row);
    }
    int rests = map.restsOn();
    return heights
        .draft()
        .key("stroke", pluck.way().word())
        .key("open_margin_mm", open)
        .key("margin_mm", rows)
        .key("least_margin_mm", map.leastMm())
        .key("stopped_at", map.stoppedAt())
        .key("over_fret", map.overFret())
        .key("rests_on", rests == 0 ? null : rests)
        .within(Possible.RELIEF, bow.relief().mm())
        .within(Possible.MARGIN, map.leastMm())
        .doubtIf(rests > 0, "Without any stroke " + map.rests() + ".")
        .say(verdict(map, pluck))
        .draw(ContactDrawing.lines(map, 1))
        .by(FORMULA, StrokeOptions.ASSUMES);
  }

  private static String verdict(ContactMap map, Pluck pluck) {
    String size = Decimals.print(Math.abs(map.leastMm()), 2) + " mm, " + map.where() + ".";
    return (pluck.way() == Pluck.Way.PUSHED ? "Pushed" : "Pulled")
        + (map.leastMm() < 0 ? ", it strikes. Deepest by " : ", it clears every fret. Nearest by ")
        + size;
  }
}
