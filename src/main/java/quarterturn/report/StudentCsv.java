package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Plan;
import quarterturn.lesson.StudentRecord;
import quarterturn.lesson.Value;
import quarterturn.unit.Bracket;

/**
 * A student's predictions as comma-separated values after RFC 4180, one a row. Gaps are two bounds
 * in millimetres, an open one empty; other readings and turns are one value in their unit, a turn
 * with plus to tighten.
 */
final class StudentCsv {
  private static final List<String> HEAD =
      List.of(
          "lesson",
          "student",
          "bench",
          "step",
          "part",
          "kind",
          "before low",
          "before high",
          "before value",
          "direction",
          "size",
          "unit",
          "reason",
          "with help",
          "own low",
          "own high",
          "result low",
          "result high",
          "result value",
          "made of it",
          "question",
          "answer",
          "wanted again");

  private StudentCsv() {}

  static List<List<String>> rows(Plan plan, StudentRecord record) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEAD);
    for (StudentRecord.Tried tried : record.tries()) {
      LessonEvent.Opened opened = tried.opened();
      LessonEvent.Reflected reflected = tried.reflected();
      List<String> row = new ArrayList<>();
      row.add(SheetCsv.text(plan.lesson()));
      row.add(SheetCsv.text(record.student()));
      row.add(SheetCsv.text(tried.bench()));
      row.add(SheetCsv.text(opened.spot().key()));
      row.add(SheetCsv.text(opened.spot().part()));
      row.add(opened.turn() ? "turn" : "reading");
      bounds(row, opened.before() instanceof Value.Gap gap ? gap.bracket() : null);
      row.add(value(opened.before()));
      // A first reading has no way.
      boolean way = opened.turn() || opened.before() != null;
      row.add(way ? tried.prediction().direction().word() : "");
      row.add(SheetCsv.number(tried.prediction().size()));
      row.add(opened.turn() ? "turn" : SheetCsv.text(StudentSheet.unit(tried)));
      row.add(SheetCsv.text(tried.prediction().reason()));
      row.add(yes(tried.prediction().helped()));
      bounds(row, tried.own());
      bounds(row, tried.result() instanceof Value.Gap gap ? gap.bracket() : null);
      row.add(value(tried.result()));
      row.add(reflected == null ? "" : SheetCsv.text(reflected.reason()));
      row.add(reflected == null ? "" : SheetCsv.textOrEmpty(reflected.question()));
      row.add(reflected == null ? "" : SheetCsv.textOrEmpty(reflected.answer()));
      row.add(reflected == null ? "" : yes(reflected.missed()));
      rows.add(row);
    }
    return rows;
  }

  static void bounds(List<String> row, @Nullable Bracket bracket) {
    row.add(bracket == null ? "" : SheetCsv.number(bracket.lowMm()));
    row.add(bracket == null ? "" : SheetCsv.number(bracket.highMm()));
  }

  private static String value(@Nullable Value value) {
    return value instanceof Value.Number number
        ? SheetCsv.number(number.value())
        : value instanceof Value.Rod rod ? SheetCsv.number(rod.turn().turns()) : "";
  }

  private static String yes(boolean is) {
    return is ? "yes" : "no";
  }
}
