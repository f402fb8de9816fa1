package quarterturn.report;

import java.util.List;

/**
 * A sheet of a lesson, in words but in no format yet.
 *
 * @param rows the same as a table for a spreadsheet, under a first row that names its columns; each
 *     cell is safe as it stands
 */
record LessonPage(String title, List<SheetPart> parts, List<List<String>> rows) {
  LessonPage {
    parts = List.copyOf(parts);
    rows = List.copyOf(rows);
  }

  /** What every sheet of a lesson says of itself. */
  static SheetPart about() {
    return new SheetPart(
        "About this sheet",
        List.of(
            new SheetPart.Points(
                List.of(
                    "It has no grades, and the program makes none.",
                    "Times are those of each bench's own clock.",
                    "Readings are those of the people at the bench, with the gauges at hand."))));
  }
}
