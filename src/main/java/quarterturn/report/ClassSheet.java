package quarterturn.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quarterturn.lesson.BenchRecord;
import quarterturn.lesson.BoardView;
import quarterturn.lesson.Direction;
import quarterturn.lesson.Keep;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Roster;
import quarterturn.lesson.Spread;
import quarterturn.lesson.StepSpread;
import quarterturn.lesson.StudentRecord;
import quarterturn.lesson.WriterLog;

/**
 * The class's sheet: how far each bench came, and how far predictions and readings lay apart. A
 * stop is told without its bench, so that nobody is pointed at.
 */
final class ClassSheet {
  private final Plan plan;
  private final List<BenchRecord> benches;
  private final List<StudentRecord> students;
  private final List<StepSpread> spreads;
  private final List<Roster.Share> shares;

  private final boolean saddlesToo;

  private ClassSheet(
      Plan plan, List<WriterLog> logs, List<Roster.Share> shares, boolean saddlesToo) {
    this.saddlesToo = saddlesToo;
    this.shares = List.copyOf(shares);
    this.plan = plan;
    this.benches = BenchRecord.of(plan, logs);
    this.students = StudentRecord.of(plan, logs);
    this.spreads = BoardView.of(plan, logs).spreads();
  }

  /**
   * The sheet.
   *
   * @param saddlesToo whether the lesson has a saddle to set, so that it may be still to come
   */
  static LessonPage of(
      Plan plan, List<WriterLog> logs, List<Roster.Share> shares, boolean saddlesToo) {
    ClassSheet sheet = new ClassSheet(plan, logs, shares, saddlesToo);
    return new LessonPage("Lesson sheet of the class", sheet.parts(), sheet.rows());
  }

  private List<SheetPart> parts() {
    List<SheetPart> parts = new ArrayList<>();
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Lesson", plan.title());
    facts.put("Id", plan.lesson());
    facts.put("Procedures", String.join(", ", plan.procedures()));
    facts.put("Benches", String.valueOf(benches.size()));
    facts.put("Students", String.valueOf(students.size()));
    parts.add(new SheetPart("Lesson", List.of(new SheetPart.Facts(facts))));
    parts.add(new SheetPart("Benches", List.of(benches())));
    parts.add(new SheetPart("Predicted and read", List.of(spread())));
    parts.add(new SheetPart("Who did what", roster()));
    parts.add(new SheetPart("Holds", holds()));
    parts.add(StudentSheet.points("Stops", stops()));
    parts.add(StudentSheet.points("Questions that come back next time", returning()));
    parts.add(LessonPage.about());
    return parts;
  }

  private SheetPart.Grid benches() {
    List<List<String>> rows = new ArrayList<>();
    for (BenchRecord record : benches) {
      rows.add(
          List.of(
              record.bench().name(),
              String.join(", ", record.students()),
              String.join(", ", record.stages()),
              String.valueOf(
                  record.bench().rounds().stream().filter(r -> r.result() != null).count()),
              record.bench().over() ? "yes" : "no"));
    }
    return new SheetPart.Grid(
        "Who was there, and the parts a bench came to.",
        List.of("Bench", "Students", "Parts", "Readings and turns", "Left in order"),
        rows);
  }

  private SheetPart.Block spread() {
    Map<String, String> facts = new LinkedHashMap<>();
    for (StepSpread spread : spreads) {
      List<String> words = BoardWords.spread(spread);
      facts.put(spread.step(), words.isEmpty() ? "Nothing yet." : String.join(" ", words));
    }
    return facts.isEmpty()
        ? new SheetPart.Points(List.of("Nothing was predicted or read."))
        : new SheetPart.Facts(facts);
  }

  /** In the order of their names, so that nobody stands first for having done more. */
  private List<SheetPart.Block> roster() {
    List<List<String>> rows = new ArrayList<>();
    for (StudentRecord student : students) {
      int readings = 0;
      int turns = 0;
      int saddles = 0;
      for (Roster.Share share : shares) {
        if (share.student().equals(student.student())) {
          readings += share.readings();
          turns += share.turns();
          saddles += share.saddles();
        }
      }
      List<String> toCome = new ArrayList<>();
      if (readings == 0) {
        toCome.add("a reading");
      }
      if (saddlesToo && saddles == 0) {
        toCome.add("a saddle");
      }
      rows.add(
          List.of(
              student.student(),
              String.valueOf(readings),
              String.valueOf(turns),
              String.valueOf(saddles),
              String.join(", ", toCome)));
    }
    return rows.isEmpty()
        ? List.of(new SheetPart.Points(List.of("Nobody came.")))
        : List.of(
            new SheetPart.Grid(
                "How often each read, turned the rod and set a saddle, as the duties went round.",
                List.of("Student", "Readings", "Rod turns", "Saddles", "Still to come"),
                rows));
  }

  private List<SheetPart.Block> holds() {
    List<List<String>> rows = new ArrayList<>();
    for (BenchRecord record : benches) {
      for (BenchRecord.Kept kept : record.kept()) {
        Keep keep = kept.keep();
        if (keep.kind() != Keep.Kind.STOP) {
          rows.add(
              List.of(
                  record.bench().name(),
                  keep.kind() == Keep.Kind.TEACHER ? "the teacher" : "a hold point",
                  keep.spot() == null ? "" : keep.spot().key(),
                  keep.what(),
                  lasted(kept)));
        }
      }
    }
    return rows.isEmpty()
        ? List.of(new SheetPart.Points(List.of("None.")))
        : List.of(
            new SheetPart.Grid(
                "What kept the benches, and for how long.",
                List.of("Bench", "Held by", "Step", "For", "Lasted"),
                rows));
  }

  private List<String> stops() {
    List<String> out = new ArrayList<>();
    for (BenchRecord record : benches) {
      for (BenchRecord.Kept kept : record.kept()) {
        if (kept.keep().kind() == Keep.Kind.STOP) {
          String reason = kept.keep().what().isEmpty() ? "No reason given." : kept.keep().what();
          String at = kept.keep().spot() == null ? "" : "At " + kept.keep().spot().key() + ": ";
          out.add(at + reason + " (" + lasted(kept) + ")");
        }
      }
    }
    // Not bench by bench, since that order would tell whose they are.
    return out.stream().sorted().toList();
  }

  private static String lasted(BenchRecord.Kept kept) {
    return kept.lasted() == null ? "not released" : Dates.lasting(kept.lasted());
  }

  private List<String> returning() {
    Map<String, Integer> questions = new TreeMap<>();
    students.forEach(s -> s.returning().forEach(q -> questions.merge(q, 1, Integer::sum)));
    List<String> out = new ArrayList<>();
    questions.forEach((q, n) -> out.add(q + " (" + n + (n == 1 ? " student)" : " students)")));
    return out;
  }

  /** A step a row: how far apart first, the mean last. */
  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "lesson",
            "step",
            "predictions",
            "less",
            "same",
            "more",
            "size low",
            "size high",
            "readings",
            "read low",
            "read high",
            "mean low",
            "mean high"));
    for (StepSpread spread : spreads) {
      List<String> row = new ArrayList<>();
      row.add(SheetCsv.text(plan.lesson()));
      row.add(SheetCsv.text(spread.step()));
      row.add(String.valueOf(spread.sizes().size()));
      for (Direction way : Direction.values()) {
        row.add(String.valueOf(spread.directions().getOrDefault(way, 0)));
      }
      boolean none = spread.sizes().isEmpty();
      row.add(none ? "" : SheetCsv.number(spread.sizes().get(0)));
      row.add(none ? "" : SheetCsv.number(spread.sizes().get(spread.sizes().size() - 1)));
      row.add(String.valueOf(spread.readings().size()));
      Spread readings = Spread.of(spread.readings(), spread.readings().size());
      StudentCsv.bounds(row, readings == null ? null : readings.extent());
      StudentCsv.bounds(row, readings == null ? null : readings.mean());
      rows.add(row);
    }
    return rows;
  }
}
