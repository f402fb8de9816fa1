package quarterturn.report.sheet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import quarterturn.unit.NotUnderstoodException;

/** Writes a sheet to the user's file, in UTF-8. */
public final class SheetFile {
  private SheetFile() {}

  /**
   * Writes {@code text} to a file.
   *
   * @param force whether a file that exists may be overwritten
   * @throws IOException saying what to do
   */
  public static void write(Path file, String text, boolean force) throws IOException {
    if (Files.isDirectory(file)) {
      throw new IOException("--out: " + file + " is a folder; name a file");
    }
    try {
      Files.writeString(
          file,
          text,
          StandardCharsets.UTF_8,
          StandardOpenOption.WRITE,
          force ? StandardOpenOption.CREATE : StandardOpenOption.CREATE_NEW,
          StandardOpenOption.TRUNCATE_EXISTING);
    } catch (FileAlreadyExistsException e) {
      throw new IOException(
          "--out: " + file + " is there already; choose another name, or add --force", e);
    } catch (NoSuchFileException e) {
      throw new IOException("--out: there is no folder to put " + file + " in; make it first", e);
    }
  }

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
