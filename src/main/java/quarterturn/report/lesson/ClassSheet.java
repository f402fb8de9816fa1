package quarterturn.report.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Direction;
import quarterturn.lesson.Keep;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Spread;
import quarterturn.lesson.StepSpread;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.teacher.BenchRecord;
import quarterturn.lesson.teacher.DeskView;
import quarterturn.lesson.teacher.Idea;
import quarterturn.lesson.teacher.Roster;
import quarterturn.lesson.teacher.StudentRecord;
import quarterturn.report.sheet.SheetCsv;
import quarterturn.report.sheet.SheetPart;
import quarterturn.unit.Counted;
import quarterturn.unit.Dates;

/**
 * The sheet for the class: how far each bench got, and how much predictions and readings differed.
 * A stopped bench is not named, so that nobody is pointed at.
 */
final class ClassSheet {
  private static final String HEAD =
      "lesson,step,predictions,less,same,more,size low,size high,readings,read low,read high,"
          + "mean low,mean high";

  /** One that was never released lasts longest. */
  private static final Comparator<BenchRecord.Kept> LONGEST =
      Comparator.comparing(
          BenchRecord.Kept::lasted, Comparator.nullsLast(Comparator.naturalOrder()));

  private final StepTitles titles;
  private final Plan plan;
  private final List<BenchRecord> benches;
  private final List<StudentRecord> students;
  private final List<StepSpread> spreads;
  private final List<Idea> ideas;

  private ClassSheet(Plan plan, List<WriterLog> logs, StepTitles titles) {
    this.titles = titles;
    this.plan = plan;
    this.benches = BenchRecord.of(plan, logs);
    this.students = StudentRecord.of(plan, logs);
    this.spreads = DeskView.of(plan, logs).spreads();
    this.ideas = Idea.of(students);
  }

  /**
   * The sheet.
   *
   * @param saddlesToo whether the lesson has a step that sets a saddle
   * @param necks the real ones that stand turned, with what is typed to set them back; null where
   *     the lesson had none
   */
  static LessonPage of(
      Plan plan,
      List<WriterLog> logs,
      List<Roster.Share> shares,
      boolean saddlesToo,
      StepTitles titles,
      @Nullable List<List<String>> necks) {
    ClassSheet sheet = new ClassSheet(plan, logs, titles);
    List<SheetPart> parts = new ArrayList<>(sheet.parts(shares, saddlesToo));
    if (necks != null) {
      parts.add(parts.size() - 1, turned(necks));
    }
    return new LessonPage(
        "Lesson sheet of the class",
        parts,
        SheetCsv.table(HEAD, sheet.spreads.stream().map(sheet::row).toList()));
  }

  private List<SheetPart> parts(List<Roster.Share> shares, boolean saddlesToo) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Lesson", plan.title());
    facts.put("Id", plan.lesson());
    facts.put("Procedures", String.join(", ", plan.procedures()));
    facts.put("Benches", String.valueOf(benches.size()));
    facts.put("Students", String.valueOf(students.size()));
    List<SheetPart> parts = new ArrayList<>();
    parts.add(new SheetPart("Lesson", List.of(new SheetPart.Facts(facts))));
    parts.add(new SheetPart("Benches", List.of(benches())));
    parts.add(
        SheetPart.grid(
            "Ideas",
            "Nothing was predicted yet.",
            "How many students had it right, at first and at last: in their predictions, and in"
                + " their answers.",
            List.of("Idea", "At first", "At last"),
            ideas.stream().map(ClassSheet::idea).toList()));
    parts.add(Spreads.byString(benches, titles));
    parts.add(Spreads.byStudent(students));
    parts.add(
        SheetPart.grid(
            "Who did what",
            "Nobody came.",
            "How often each read, turned the rod and set a saddle, as the duties went round.",
            List.of("Student", "Readings", "Rod turns", "Saddles", "Still to come"),
            students.stream().map(s -> did(s.student(), shares, saddlesToo)).toList()));
    List<List<String>> holds = holds();
    if (!holds.isEmpty()) {
      parts.add(
          SheetPart.grid(
              "Holds",
              "None.",
              "What kept the benches, how often, and for how long at most.",
              List.of("Bench", "Held by", "For", "Times", "Longest"),
              holds));
    }
    points(parts, "Stops", stops());
    points(parts, "What to repeat", repeat());
    points(parts, "Questions that come back next time", returning());
    parts.add(LessonPage.about());
    return parts;
  }

  private static void points(List<SheetPart> parts, String title, List<String> points) {
    if (!points.isEmpty()) {
      parts.add(SheetPart.points(title, points));
    }
  }

  private static SheetPart turned(List<List<String>> necks) {
    return SheetPart.grid(
        "Necks to set back",
        "No real neck stands turned.",
        "Real necks that the lesson turned. Setting one back counts for the day as well.",
        List.of("Bench", "The rod stands", "Type"),
        necks);
  }

  private SheetPart.Grid benches() {
    return new SheetPart.Grid(
        "Who was there, and the parts a bench came to.",
        List.of("Bench", "Students", "Parts", "Readings and turns", "Left in order"),
        benches.stream().map(ClassSheet::bench).toList());
  }

  private static List<String> bench(BenchRecord record) {
    long results = record.bench().rounds().stream().filter(r -> r.result() != null).count();
    return List.of(
        record.bench().name(),
        String.join(", ", record.students()),
        String.join(", ", record.stages()),
        String.valueOf(results),
        record.bench().gone() ? "yes" : "no");
  }

  /**
   * A student's row of work, with what is still to come; students go by name, not by how much they
   * did.
   */
  private static List<String> did(String student, List<Roster.Share> shares, boolean saddlesToo) {
    List<Roster.Share> own = shares.stream().filter(s -> s.student().equals(student)).toList();
    int readings = own.stream().mapToInt(Roster.Share::readings).sum();
    int turns = own.stream().mapToInt(Roster.Share::turns).sum();
    int saddles = own.stream().mapToInt(Roster.Share::saddles).sum();
    List<String> toCome = new ArrayList<>();
    if (readings == 0) {
      toCome.add("a reading");
    }
    if (saddlesToo && saddles == 0) {
      toCome.add("a saddle");
    }
    return List.of(
        student,
        String.valueOf(readings),
        String.valueOf(turns),
        String.valueOf(saddles),
        String.join(", ", toCome));
  }

  /** What kept each bench, alike once. */
  private List<List<String>> holds() {
    List<List<String>> rows = new ArrayList<>();
    for (BenchRecord record : benches) {
      Map<List<String>, List<BenchRecord.Kept>> alike = new LinkedHashMap<>();
      for (BenchRecord.Kept kept : record.kept()) {
        Keep keep = kept.keep();
        String by = keep.kind() == Keep.Kind.TEACHER ? "the teacher" : "a hold point";
        if (keep.kind() != Keep.Kind.STOP) {
          alike.computeIfAbsent(List.of(by, keep.what()), k -> new ArrayList<>()).add(kept);
        }
      }
      alike.forEach(
          (what, all) ->
              rows.add(
                  List.of(
                      record.bench().name(),
                      what.get(0),
                      what.get(1),
                      String.valueOf(all.size()),
                      lasted(Collections.max(all, LONGEST)))));
    }
    return rows;
  }

  private List<String> stops() {
    return benches.stream()
        .flatMap(record -> record.kept().stream())
        .filter(kept -> kept.keep().kind() == Keep.Kind.STOP)
        .map(this::stop)
        .sorted()
        .toList();
  }

  private String stop(BenchRecord.Kept kept) {
    Keep keep = kept.keep();
    String reason = keep.what().isEmpty() ? "No reason given." : keep.what();
    String at = keep.spot() == null ? "" : "At " + titles.title(keep.spot().key()) + ": ";
    return at + reason + " (" + lasted(kept) + ")";
  }

  private static String lasted(BenchRecord.Kept kept) {
    return kept.lasted() == null ? "not released" : Dates.lasting(kept.lasted());
  }

  private static List<String> idea(Idea idea) {
    return List.of(
        idea.name(),
        idea.first() + " of " + Counted.of(idea.of(), "student"),
        idea.last() + " of " + Counted.of(idea.of(), "student"));
  }

  /** Ideas that not all had at last, those that most missed coming first; then how to read. */
  private List<String> repeat() {
    List<String> out = new ArrayList<>();
    ideas.stream()
        .filter(idea -> idea.last() < idea.of())
        .sorted(Comparator.comparingDouble(idea -> (double) idea.last() / idea.of()))
        .map(
            i ->
                i.name()
                    + (" (" + (i.of() - i.last()) + " of " + Counted.of(i.of(), "student") + ")"))
        .forEach(out::add);
    out.addAll(Spreads.apart(benches, titles));
    return out;
  }

  private List<String> returning() {
    Map<String, Integer> questions = new TreeMap<>();
    students.forEach(s -> s.returning().forEach(q -> questions.merge(q, 1, Integer::sum)));
    List<String> out = new ArrayList<>();
    questions.forEach((q, n) -> out.add(q + " (" + Counted.of(n, "student") + ")"));
    return out;
  }

  /** The CSV row of a step: predictions by direction and size, then the readings, the mean last. */
  private List<String> row(StepSpread spread) {
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
    row.addAll(SheetCsv.bounds(readings == null ? null : readings.extent()));
    row.addAll(SheetCsv.bounds(readings == null ? null : readings.mean()));
    return row;
  }
}
