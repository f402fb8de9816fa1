package quarterturn.report.sheet;

import java.nio.file.Path;
import java.util.Locale;
import quarterturn.unit.NotUnderstoodException;

/** The file that a sheet is written to. */
public final class SheetFile {
  private SheetFile() {}

  /**
   * The format for the ending of a file's name.
   *
   * @throws NotUnderstoodException with the endings that are known
   */
  public static SheetFormat format(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    String ending = name.substring(name.lastIndexOf('.') + 1);
    return switch (ending) {
      case "txt", "text" -> SheetFormat.TEXT;
      case "md" -> SheetFormat.MARKDOWN;
      case "csv" -> SheetFormat.CSV;
      case "json" -> SheetFormat.JSON;
      case "html", "htm" -> SheetFormat.HTML;
      default ->
          throw new NotUnderstoodException(
              "a sheet's file ends in .txt, .md, .csv, .json or .html");
    };
  }
}
