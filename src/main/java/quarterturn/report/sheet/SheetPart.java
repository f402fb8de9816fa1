package quarterturn.report.sheet;

import java.util.List;
import java.util.Map;

/** A headed part of a sheet in words, independent of the format. */
public record SheetPart(String title, List<Block> blocks) {
  /** A part with a list of points; an empty list is said to be empty. */
  public static SheetPart points(String title, List<String> points) {
    return new SheetPart(title, List.of(new Points(points.isEmpty() ? List.of("None.") : points)));
  }

  /** A part with one table, or with the sentence {@code none} where the table has no row. */
  public static SheetPart grid(
      String title, String none, String caption, List<String> head, List<List<String>> rows) {
    return rows.isEmpty()
        ? new SheetPart(title, List.of(new Points(List.of(none))))
        : new SheetPart(title, List.of(new Grid(caption, head, rows)));
  }

  /** A block of content in a part. */
  public sealed interface Block {}

  /** Labels with their values, in order. */
  public record Facts(Map<String, String> facts) implements Block {}

  /** A table; every row has as many cells as the head. The first cell names its row. */
  public record Grid(String caption, List<String> head, List<List<String>> rows) implements Block {}

  /** Sentences, each a point of a list. */
  public record Points(List<String> points) implements Block {}
}
