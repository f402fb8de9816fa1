package quarterturn.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Verdict;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;
import quarterturn.unit.Printable;

/**
 * A sheet's readings as comma-separated values after RFC 4180, one reading a row under one header,
 * in UTF-8 with CR LF. Times are UTC; lengths are millimetres, intervals cents. An empty bound is
 * one that the gauge could not find; a reading with neither bounds nor value could not be taken.
 */
public final class SheetCsv {
  private static final String HEAD =
      "time,quantity,string,low,high,value,unit,frets held,read at,gauge step,part,window low,"
          + "window high,in window,spoiled by,stage,part of stage,done by,ticket,bench minutes";

  private SheetCsv() {}

  static String of(Sheet sheet) {
    Sheet.Heading heading = sheet.heading();
    Long minutes = heading.minutes();
    List<String> whose =
        List.of(
            text(heading.by()), text(heading.ticket()), minutes == null ? "" : minutes.toString());
    return table(
        HEAD,
        sheet.readings().stream()
            .map(one -> Stream.concat(row(one).stream(), whose.stream()).toList())
            .toList());
  }

  /**
   * A table as comma-separated values under a header line.
   *
   * @param rows cells that are already safe to write
   */
  public static String table(String head, List<List<String>> rows) {
    return Stream.concat(Stream.of(head), rows.stream().map(row -> String.join(",", row)))
        .map(line -> line + "\r\n")
        .collect(Collectors.joining());
  }

  private static List<String> row(Sheet.Taken taken) {
    Event.Read read = taken.read();
    Window window = taken.window();
    List<String> cells = new ArrayList<>();
    cells.add(read.at().toString());
    cells.add(read.quantity().word());
    cells.add(text(SheetRows.string(read)));
    cells.addAll(bounds(read.bracket()));
    cells.add(number(read.value()));
    cells.add(read.quantity().unit());
    cells.add(read.held().stream().map(String::valueOf).collect(Collectors.joining(" ")));
    cells.add(read.readAt() == 0 ? "" : String.valueOf(read.readAt()));
    cells.add(number(read.gaugeStep()));
    cells.add(part(taken));
    cells.add(window == null ? "" : number(window.lowMm()));
    cells.add(window == null ? "" : number(window.highMm()));
    cells.add(inWindow(taken.verdict()));
    cells.add(text(taken.spoiled()));
    cells.add(text(taken.taken().stage()));
    cells.add(text(taken.taken().part()));
    return cells;
  }

  /** Whether a reading is as found or as left; empty for one that failed or was not on a string. */
  private static String part(Sheet.Taken taken) {
    return taken.read().quantity().onString() && !taken.read().missing()
        ? taken.part().words().replace(' ', '-')
        : "";
  }

  private static String inWindow(@Nullable Verdict verdict) {
    if (verdict == null || verdict == Verdict.NOT_MEASURED) {
      return "";
    }
    return verdict == Verdict.IN ? "in" : verdict == Verdict.UNDECIDED ? "undecided" : "out";
  }

  public static List<String> bounds(@Nullable Bracket bracket) {
    return bracket == null
        ? List.of("", "")
        : List.of(number(bracket.lowMm()), number(bracket.highMm()));
  }

  /**
   * A cell for a number, empty where it is null or not finite; a leading minus needs no escaping.
   */
  public static String number(@Nullable Double number) {
    return number != null && Double.isFinite(number) ? Decimals.plain(number) : "";
  }

  /**
   * A cell of text.
   *
   * <p>A spreadsheet would run a cell that begins with = + - @ or a tab as a formula, quoted or
   * not, so what a stranger typed would run on the reader's machine. An apostrophe before it makes
   * it text.
   */
  public static String text(@Nullable String typed) {
    if (typed == null) {
      return "";
    }
    boolean formula = !typed.isEmpty() && "=+-@\t\r\n".indexOf(typed.charAt(0)) >= 0;
    String cell = (formula ? "'" : "") + Printable.of(typed);
    boolean quoted =
        cell.contains(",") || cell.contains("\"") || cell.startsWith(" ") || cell.endsWith(" ");
    return quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }
}
