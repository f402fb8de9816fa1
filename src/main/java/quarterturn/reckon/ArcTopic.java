package quarterturn.reckon;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.craft.Possible;
import quarterturn.craft.Radius;
import quarterturn.craft.StringArc;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;

/** {@code reckon arc}. */
@Command(
    addMethodSubcommands = false,
    name = "arc",
    description = "How far each string lies below the fingerboard's centre line.",
    footer = {"", "JSON: drop_mm, an array, bass side first."})
final class ArcTopic extends Topic {
  private static final int COLUMNS = 61;
  private static final int ROWS = 6;

  @Option(
      names = "--radius",
      required = true,
      paramLabel = "LENGTH",
      description = "Radius of the fingerboard, such as 241mm or 9.5in; or flat.")
  private Radius radius = Radius.FLAT;

  @Option(
      names = "--spread",
      required = true,
      paramLabel = "LENGTH",
      description = "From the first to the last string, across.")
  private Length spread = Length.mm(0);

  @Option(names = "--strings", required = true, paramLabel = "N", description = "How many strings.")
  private int strings;

  @Override
  Reckoned reckon() {
    Checked.above0("--spread", spread);
    Checked.within("--strings", strings, 2, 24);
    double[] drops =
        radius.flat()
            ? new double[strings]
            : Checked.by(
                "--radius", () -> StringArc.dropMm(Length.mm(radius.mm()), spread, strings));
    return new Reckoned.Draft()
        .key("drop_mm", drops)
        .within(Possible.DROP, drops[0])
        .say(
            radius.flat()
                ? "Over a flat fingerboard all strings stand on one line."
                : "The outer strings stand %s mm below the fingerboard's centre line."
                    .formatted(Decimals.print(drops[0], 2)))
        .draw(picture(drops))
        .draw(List.of(""))
        .draw(Columns.lines("string", 1, drops, 2))
        .by(
            "a circle, drop = R - sqrt(R^2 - y^2)",
            "evenly spaced strings over a fingerboard of one radius; to keep the same action over"
                + " each the saddles follow this arc.");
  }

  /** The strings on their arc, with the depth of the arc exaggerated. */
  private static List<String> picture(double[] drops) {
    double most = drops[0];
    int deep = most > 0 ? ROWS - 1 : 0;
    Sketch sketch = new Sketch(COLUMNS, deep + 1);
    for (int column = 0; column < COLUMNS; column++) {
      double across = 2.0 * column / (COLUMNS - 1) - 1;
      sketch.put(column, (int) Math.round(across * across * deep), '.');
    }
    for (int i = 0; i < drops.length; i++) {
      int column = (int) Math.round(i / (drops.length - 1.0) * (COLUMNS - 1));
      int row = (int) Math.round(deep == 0 ? 0 : drops[i] / most * deep);
      sketch.put(column, row, 'o');
    }
    return sketch.lines(2);
  }
}
