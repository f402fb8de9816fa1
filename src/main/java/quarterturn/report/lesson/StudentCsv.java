package quarterturn.report.lesson;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Direction;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Value;
import quarterturn.lesson.teacher.StudentRecord;
import quarterturn.report.sheet.SheetCsv;

/**
 * A student's predictions as comma-separated values (RFC 4180), one prediction a row. Gaps are two
 * bounds in millimetres, an open one empty; other readings and turns are one value in their unit,
 * plus to tighten.
 */
final class StudentCsv {
  private static final String HEAD =
      "lesson,student,bench,step,part,kind,before low,before high,before value,direction,size,unit,"
          + "reason,with help,own low,own high,result low,result high,result value,made of it,"
          + "question,answer,wanted again";

  private StudentCsv() {}

  static String of(Plan plan, StudentRecord record) {
    return SheetCsv.table(
        HEAD,
        record.tries().stream().map(tried -> row(plan.lesson(), record.student(), tried)).toList());
  }

  private static List<String> row(String lesson, String student, StudentRecord.Tried tried) {
    LessonEvent.Opened opened = tried.opened();
    LessonEvent.Reflected reflected = tried.reflected();
    List<String> row = new ArrayList<>();
    row.add(SheetCsv.text(lesson));
    row.add(SheetCsv.text(student));
    row.add(SheetCsv.text(tried.bench()));
    row.add(SheetCsv.text(opened.spot().key()));
    row.add(SheetCsv.text(opened.spot().part()));
    row.add(opened.turn() ? "turn" : "reading");
    row.addAll(bounds(opened.before()));
    row.add(value(opened.before()));
    // A first reading has no way.
    Direction way = tried.prediction().direction();
    row.add(way != null && (opened.turn() || opened.before() != null) ? way.word() : "");
    double size = tried.prediction().size();
    row.add(opened.turn() && size == 0 ? "" : SheetCsv.number(size));
    row.add(opened.turn() ? "turn" : SheetCsv.text(StudentSheet.unit(tried)));
    row.add(SheetCsv.text(tried.prediction().reason()));
    row.add(yes(tried.prediction().helped()));
    row.addAll(SheetCsv.bounds(tried.own()));
    row.addAll(bounds(tried.result()));
    row.add(value(tried.result()));
    row.add(SheetCsv.text(reflected == null ? null : reflected.reason()));
    row.add(SheetCsv.text(reflected == null ? null : reflected.question()));
    row.add(SheetCsv.text(reflected == null ? null : reflected.answer()));
    row.add(reflected == null ? "" : yes(reflected.missed()));
    return row;
  }

  private static List<String> bounds(@Nullable Value value) {
    return SheetCsv.bounds(value instanceof Value.Gap gap ? gap.bracket() : null);
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
