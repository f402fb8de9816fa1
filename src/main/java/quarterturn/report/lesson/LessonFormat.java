package quarterturn.report.lesson;

import quarterturn.report.sheet.SheetHtml;
import quarterturn.report.sheet.SheetMarkdown;
import quarterturn.report.sheet.SheetText;

/** File formats of a lesson's sheets. */
public enum LessonFormat {
  TEXT("txt"),
  MARKDOWN("md"),
  HTML("html"),
  CSV("csv");

  private final String ending;

  LessonFormat(String ending) {
    this.ending = ending;
  }

  /** The ending of the file's name, without the dot. */
  public String ending() {
    return ending;
  }

  String write(LessonPage page) {
    return switch (this) {
      case TEXT -> SheetText.of(page.title(), page.parts());
      case MARKDOWN -> SheetMarkdown.of(page.title(), page.parts());
      case HTML -> SheetHtml.of(page.title(), page.parts());
      case CSV -> page.csv();
    };
  }
}
