package quarterturn.report.lesson;

import java.util.List;
import quarterturn.report.sheet.SheetPart;

/**
 * A sheet of a lesson in words, independent of the format.
 *
 * @param csv the sheet's content as comma-separated values
 */
record LessonPage(String title, List<SheetPart> parts, String csv) {
  LessonPage {
    parts = List.copyOf(parts);
  }

  /** The part that explains every sheet of a lesson. */
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
