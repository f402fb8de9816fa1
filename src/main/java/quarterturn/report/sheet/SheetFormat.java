package quarterturn.report.sheet;

import quarterturn.unit.Dates;

/** File formats of a sheet. */
public enum SheetFormat {
  TEXT,
  MARKDOWN,
  CSV,
  JSON,
  HTML;

  /**
   * The content of the whole file.
   *
   * @param dates prints times in the formats for people; CSV and JSON have them in UTC
   */
  public String write(Sheet sheet, Dates dates) {
    return switch (this) {
      case TEXT -> SheetText.of(SheetParts.TITLE, SheetParts.of(sheet, dates));
      case MARKDOWN -> SheetMarkdown.of(SheetParts.TITLE, SheetParts.of(sheet, dates));
      case CSV -> SheetCsv.of(sheet);
      case JSON -> SheetJson.of(sheet);
      case HTML -> SheetHtml.of(sheet, dates);
    };
  }
}
