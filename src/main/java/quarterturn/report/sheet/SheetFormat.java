package quarterturn.report.sheet;

import java.util.List;
import quarterturn.unit.Dates;
import quarterturn.unit.NotUnderstoodException;

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
      case TEXT -> SheetText.of(SheetParts.title(sheet), SheetParts.of(sheet, dates));
      case MARKDOWN -> SheetMarkdown.of(SheetParts.title(sheet), SheetParts.of(sheet, dates));
      case CSV -> SheetCsv.of(sheet);
      case JSON -> SheetJson.of(sheet);
      case HTML -> SheetHtml.of(sheet, dates);
    };
  }

  /**
   * A page of these parts.
   *
   * @throws NotUnderstoodException where this format is not for people
   */
  public String write(String title, List<SheetPart> parts) {
    return switch (this) {
      case TEXT -> SheetText.of(title, parts, SheetText.PAGE);
      case MARKDOWN -> SheetMarkdown.of(title, parts);
      case HTML -> SheetHtml.of(title, parts);
      case CSV, JSON ->
          throw new NotUnderstoodException("a note is for people; use text, markdown or html");
    };
  }
}
