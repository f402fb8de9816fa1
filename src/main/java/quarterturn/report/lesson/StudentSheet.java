package quarterturn.report.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Direction;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Value;
import quarterturn.lesson.teacher.DeskWords;
import quarterturn.lesson.teacher.Roster;
import quarterturn.lesson.teacher.StudentRecord;
import quarterturn.lesson.teacher.StudentRecord.Tried;
import quarterturn.report.sheet.SheetPart;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** A student's sheet: predictions beside readings, and the student's explanations. */
final class StudentSheet {
  private final StepTitles titles;
  private final Plan plan;
  private final StudentRecord record;
  private final List<Roster.Share> shares;
  private final Dates dates;

  private StudentSheet(
      Plan plan, StudentRecord record, List<Roster.Share> shares, Dates dates, StepTitles titles) {
    this.titles = titles;
    this.shares = shares;
    this.plan = plan;
    this.record = record;
    this.dates = dates;
  }

  static LessonPage of(
      Plan plan, StudentRecord record, List<Roster.Share> shares, Dates dates, StepTitles titles) {
    StudentSheet sheet = new StudentSheet(plan, record, shares, dates, titles);
    return new LessonPage(
        "Lesson sheet of " + record.student(), sheet.parts(), StudentCsv.of(plan, record));
  }

  private List<SheetPart> parts() {
    List<SheetPart> parts = new ArrayList<>();
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Lesson", plan.title());
    facts.put("Id", plan.lesson());
    facts.put("Student", record.student());
    facts.put("Bench", String.join(", ", record.benches()));
    parts.add(new SheetPart("Lesson", List.of(new SheetPart.Facts(facts))));
    parts.add(expected());
    if (record.tries().stream().anyMatch(StudentSheet::spoke)) {
      parts.add(
          new SheetPart(
              "In your own words",
              IntStream.rangeClosed(1, record.tries().size())
                  .filter(number -> spoke(record.tries().get(number - 1)))
                  .mapToObj(this::words)
                  .toList()));
    }
    if (!record.again().isEmpty()) {
      parts.add(
          new SheetPart(
              "Asked again from earlier lessons",
              record.again().stream().map(StudentSheet::again).toList()));
    }
    parts.add(SheetPart.points("Questions that come back next time", record.returning()));
    parts.add(
        SheetPart.grid(
            "What you did at the bench",
            "Nothing was begun.",
            "The duties go round.",
            List.of("Bench", "Part", "Duty", "Readings", "Rod turns", "Saddles"),
            shares.stream()
                .filter(share -> share.student().equals(record.student()))
                .map(StudentSheet::duties)
                .toList()));
    SheetPart.Block levels =
        new SheetPart.Grid(
            "It gives way as predictions come right without help, and comes back on an error."
                + " Hazards are always shown.",
            List.of("Bench", "From", "Step", "Shown", "Set by"),
            record.levels().stream().map(this::level).toList());
    parts.add(new SheetPart("How much of the example was shown", List.of(levels)));
    parts.add(LessonPage.about());
    return parts;
  }

  private SheetPart expected() {
    boolean own = record.tries().stream().anyMatch(t -> t.own() != null);
    List<String> head = new ArrayList<>(List.of("No.", "Step", "Before", "Expected", "Came"));
    if (own) {
      head.add("You read");
    }
    List<List<String>> rows = new ArrayList<>();
    for (Tried tried : record.tries()) {
      List<String> row = new ArrayList<>();
      row.add(String.valueOf(rows.size() + 1));
      row.add(titles.title(tried.opened().spot().key()));
      row.add(tried.opened().before() == null ? "" : tried.opened().before().toString());
      row.add(expected(tried));
      row.add(came(tried.result()));
      if (own) {
        row.add(tried.own() == null ? "" : tried.own().toString());
      }
      rows.add(row);
    }
    return SheetPart.grid(
        "Expected, and what came",
        "Nothing was predicted.",
        "Each prediction was locked before its result.",
        head,
        rows);
  }

  private static String expected(Tried tried) {
    Prediction prediction = tried.prediction();
    String help = prediction.helped() ? ", with help" : "";
    Direction direction = prediction.direction();
    boolean turn = tried.opened().turn();
    // Where nothing was read before there is no way, and the size alone counts.
    String way =
        direction == null || (!turn && tried.opened().before() == null)
            ? ""
            : direction.words(turn);
    if (turn) {
      return way + (prediction.size() == 0 ? "" : " " + new Turn(prediction.size())) + help;
    }
    String size = (Decimals.plain(prediction.size()) + " " + unit(tried)).strip();
    return (way.isEmpty() ? size : way + ", " + size) + help;
  }

  static String unit(Tried tried) {
    for (Value value : new Value[] {tried.result(), tried.opened().before()}) {
      if (value instanceof Value.Gap) {
        return "mm";
      } else if (value instanceof Value.Number number) {
        return number.unit();
      }
    }
    return "";
  }

  private static String came(@Nullable Value result) {
    return result == null
        ? "not yet"
        : result instanceof Value.None ? "could not be measured" : result.toString();
  }

  /** Whether a student said more of a try than what was expected. */
  private static boolean spoke(Tried tried) {
    LessonEvent.Reflected reflected = tried.reflected();
    boolean after =
        reflected != null && (reflected.reason() != null || reflected.question() != null);
    return after || tried.prediction().reason() != null;
  }

  private SheetPart.Block words(int number) {
    Tried tried = record.tries().get(number - 1);
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("No. " + number, tried.opened().spot().part());
    put(facts, "Expected because", tried.prediction().reason());
    LessonEvent.Reflected reflected = tried.reflected();
    if (reflected != null) {
      put(facts, "Made of it", reflected.reason());
      if (reflected.question() != null) {
        facts.put("Asked", reflected.question());
        facts.put("Answered", reflected.answer() == null ? "nothing" : reflected.answer());
      }
    }
    return new SheetPart.Facts(facts);
  }

  private static void put(Map<String, String> facts, String name, @Nullable String words) {
    if (words != null) {
      facts.put(name, words);
    }
  }

  private static SheetPart.Block again(LessonEvent.AskedAgain asked) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Asked", asked.question());
    facts.put("Answered", asked.answer());
    return new SheetPart.Facts(facts);
  }

  private static List<String> duties(Roster.Share share) {
    return List.of(
        share.bench(),
        share.part(),
        String.join(", ", share.duties()),
        String.valueOf(share.readings()),
        String.valueOf(share.turns()),
        String.valueOf(share.saddles()));
  }

  private List<String> level(StudentRecord.Stood stood) {
    return List.of(
        stood.bench(),
        dates.clock(stood.at()),
        stood.spot() == null ? "" : titles.title(stood.spot().key()),
        DeskWords.level(stood.standing()),
        stood.byTeacher() ? "the teacher" : "");
  }
}
