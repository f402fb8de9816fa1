package quarterturn.report.sheet;

import java.util.List;
import java.util.Map;

/** A headed part of a sheet, in words but in no format yet. */
public record SheetPart(String title, List<Block> blocks) {
  /** A part of points; without any it says so. */
  public static SheetPart points(String title, List<String> points) {
    return new SheetPart(title, List.of(new Points(points.isEmpty() ? List.of("None.") : points)));
  }

  /** A part of one table; without a row it says {@code none}. */
  public static SheetPart grid(
      String title, String none, String caption, List<String> head, List<List<String>> rows) {
    return rows.isEmpty()
        ? new SheetPart(title, List.of(new Points(List.of(none))))
        : new SheetPart(title, List.of(new Grid(caption, head, rows)));
  }

  /** What stands in a part. */
  public sealed interface Block {}

  /** Labels and values, in order. */
  public record Facts(Map<String, String> facts) implements Block {}

  /** A table; every row has as many cells as the head. The first cell names its row. */
  public record Grid(String caption, List<String> head, List<List<String>> rows) implements Block {}

  /** Sentences, one point each. */
  public record Points(List<String> points) implements Block {}
}
