package quarterturn.reckon;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.craft.Possible;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;

/** {@code reckon gauge}. */
@Command(
    addMethodSubcommands = false,
    name = "gauge",
    description = "What a reading by thickness gauges says.",
    footer = {"", "JSON: low_mm, high_mm; null where that end is not known."})
final class GaugeTopic extends Topic {
  private static final int SCALE_COLUMNS = 60;

  @Option(
      names = "--reading",
      required = true,
      paramLabel = "READING",
      description = "Such as \"0.30 passes 0.35 lifts\", 12..14 thou, touches or card.")
  private String reading = "";

  @Option(
      names = "--step",
      paramLabel = "LENGTH",
      description = "The gauge's step, put around a single number; 0.05 mm unless given.")
  private Length step = Length.mm(0.05);

  @Override
  Reckoned reckon() {
    Checked.above0("--step", step);
    Bracket bracket = Checked.by("--reading", () -> BracketParser.parse(reading, step.mm()));
    return new Reckoned.Draft()
        .key("low_mm", bracket.lowMm())
        .key("high_mm", bracket.highMm())
        .within(Possible.GAP, Math.max(0, bracket.lowMm()))
        .say(sentence(bracket))
        .draw(picture(bracket))
        .by(
            "a bracket: the gap is at least the gauge that passes and at most the one that pushes"
                + " the string up",
            "clean gauges and a string that the gauge just does not move. A bank card is 0.76 mm,"
                + " give or take 0.08 (ISO/IEC 7810 ID-1).");
  }

  private static String sentence(Bracket bracket) {
    if (bracket.noGap() && bracket.highMm() <= 0) {
      return "No gap: straight or bowed back, nobody can say by how much.";
    }
    return "The gap is " + bracket + ".";
  }

  /** The bracket drawn on a scale that goes from zero to a little beyond the reading. */
  private static List<String> picture(Bracket bracket) {
    if (!bracket.bounded()) {
      return List.of();
    }
    double end = bracket.highMm() * 1.25;
    Sketch sketch = new Sketch(SCALE_COLUMNS + 12, 2);
    sketch.write(0, 0, "|" + ".".repeat(SCALE_COLUMNS - 1) + "|");
    int low = (int) Math.round(bracket.lowMm() / end * SCALE_COLUMNS);
    int high = (int) Math.round(bracket.highMm() / end * SCALE_COLUMNS);
    sketch.write(low, 0, "[" + "=".repeat(Math.max(0, high - low - 1)) + "]");
    sketch.write(0, 1, "0");
    sketch.write(SCALE_COLUMNS, 1, Decimals.print(end, 2) + " mm");
    return sketch.lines(2);
  }
}
