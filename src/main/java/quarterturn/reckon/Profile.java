package quarterturn.reckon;

import java.util.ArrayList;
import java.util.List;
import quarterturn.craft.Neck;
import quarterturn.craft.Scale;
import quarterturn.craft.StringLine;
import quarterturn.unit.Decimals;

/** A neck from the side with a string over it, its heights drawn larger than life. */
final class Profile {
  private static final int COLUMNS = 74;
  private static final int ROWS = 11;

  private Profile() {}

  static List<String> lines(StringLine line, int last) {
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
        "From the side, heights drawn %s times too large; string -, board _:"
            .formatted(Decimals.print(2 * (ROWS - 1) / span * scale.mm() / (COLUMNS - 1), 0)));
    lines.addAll(sketch.lines(2));
    return lines;
  }

  private static int row(double height, double low, double span) {
    return (int) Math.round((ROWS - 1) * (1 - (height - low) / span));
  }
}
