package quarterturn.reckon;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.craft.Held;
import quarterturn.craft.LowestAction;
import quarterturn.craft.Pluck;
import quarterturn.craft.Possible;
import quarterturn.unit.Decimals;
import quarterturn.unit.Force;
import quarterturn.unit.Length;

/** {@code reckon relief-for}. */
@Command(
    addMethodSubcommands = false,
    name = "relief-for",
    description = "The relief that allows the lowest action without contact.",
    footer = {"", "JSON: stroke (pushed or pulled), relief_mm, action12_mm, action12_straight_mm."})
final class ReliefForTopic extends Topic {
  @Mixin private BowOptions bow = new BowOptions();

  @Mixin private NutOption nut = new NutOption();

  @Mixin private StrokeOptions stroke = new StrokeOptions();
  @Mixin private LastFret lastFret = new LastFret();

  @Override
  Reckoned reckon() {
    int last = lastFret.last(bow);
    int joint = bow.joint();
    Held held = bow.held();
    Pluck pluck = stroke.pluck(bow.scale(), last);
    LowestAction lowest = lowest(pluck, joint, held, last);
    double saved = lowest.action12Straight().mm() - lowest.action12().mm();
    return new Reckoned.Draft()
        .key("stroke", pluck.way().word())
        .key("relief_mm", lowest.relief().mm())
        .key("action12_mm", lowest.action12().mm())
        .key("action12_straight_mm", lowest.action12Straight().mm())
        .within(Possible.ACTION, lowest.action12().mm())
        .within(Possible.RELIEF, lowest.relief().mm())
        .doubtIf(
            pluck.force().newtons() == 0, "With no stroke at all the string just lies on a fret.")
        .say(
            "Lowest clear action at fret 12 for a %s string: %s mm, with %s mm of relief (%s)."
                .formatted(
                    pluck.way().word(),
                    Decimals.print(lowest.action12().mm(), 2),
                    Decimals.print(lowest.relief().mm(), 2),
                    BowOptions.words(held)))
        .say(
            "A straight neck would need %s mm, %s mm more."
                .formatted(
                    Decimals.print(lowest.action12Straight().mm(), 2), Decimals.print(saved, 2)))
        .draw(table(pluck, joint, held, last))
        .by(
            ContactTopic.FORMULA
                + "; the lowest point of the envelope of straight lines, one for each pair of frets",
            StrokeOptions.ASSUMES
                + " A real fingerboard's frets are uneven by some hundredths; leave room for"
                + " that.");
  }

  private LowestAction lowest(Pluck pluck, int joint, Held held, int last) {
    Length slot = nut.height();
    Force tension = stroke.tension();
    return Checked.by(
        "--last-fret", () -> LowestAction.of(bow.scale(), joint, held, slot, tension, pluck, last));
  }

  /**
   * Lines that show the result for five values of the share that returns, which nobody can look up.
   */
  private List<String> table(Pluck pluck, int joint, Held held, int last) {
    List<String> lines = new ArrayList<>();
    lines.add("With another share returning:");
    for (double share : new double[] {0, 0.25, 0.5, 0.75, 1}) {
      Pluck returning = new Pluck(pluck.force(), pluck.fromSaddle(), pluck.way(), share);
      LowestAction other = lowest(returning, joint, held, last);
      lines.add(
          "  B %s   relief %s mm   action at fret 12 %s mm"
              .formatted(
                  Decimals.print(share, 2),
                  Decimals.print(other.relief().mm(), 2),
                  Decimals.print(other.action12().mm(), 2)));
    }
    return lines;
  }
}
