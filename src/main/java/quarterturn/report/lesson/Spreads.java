package quarterturn.report.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Round;
import quarterturn.lesson.Spread;
import quarterturn.lesson.Value;
import quarterturn.lesson.teacher.BenchRecord;
import quarterturn.lesson.teacher.StudentRecord;
import quarterturn.lesson.teacher.StudentRecord.Tried;
import quarterturn.report.sheet.SheetPart;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;

/** How far predictions and readings of a class lay apart, string by string and by student. */
final class Spreads {
  /** Digits of a gap in millimetres; gauges are read no finer. */
  private static final int DIGITS = 2;

  /** The column of readings taken alone. */
  private static final int ALONE = 4;

  private Spreads() {}

  /**
   * One reading at one bench.
   *
   * @param what was read, with its string
   * @param time how often it had been read there, this time too
   */
  private record Row(String what, int time, String bench, Round round) {
    String named() {
      return time == 1 ? what : what + ", time " + time;
    }
  }

  private static List<Row> rows(List<BenchRecord> benches, StepTitles titles) {
    List<Row> out = new ArrayList<>();
    for (BenchRecord record : benches) {
      Map<String, Integer> times = new HashMap<>();
      for (Round round : record.bench().rounds()) {
        if (!round.opened().turn() && round.shown() != null) {
          String done = titles.what(round.opened().spot().key());
          // The gap that a turn leaves is predicted where the turn is made.
          String what = done.equals(StepTitles.TURN) ? "the gap after a turn" : done;
          out.add(new Row(what, times.merge(what, 1, Integer::sum), record.bench().name(), round));
        }
      }
    }
    // Equal rows stay in the order of the benches.
    out.sort(Comparator.comparing(Row::what).thenComparing(Row::time));
    return out;
  }

  /** What each student expected and read, a string after the other. */
  static SheetPart byString(List<BenchRecord> benches, StepTitles titles) {
    return SheetPart.grid(
        "Spread by string",
        "Nothing was read yet.",
        "What each expected, and what came; where each read alone, all readings.",
        List.of("Reading", "Bench", "Expected", "Read"),
        rows(benches, titles).stream()
            .map(row -> List.of(row.named(), row.bench(), expected(row.round()), read(row.round())))
            .toList());
  }

  private static String expected(Round round) {
    return new TreeMap<>(round.predictions())
        .entrySet().stream()
            .sorted(Comparator.comparingDouble(e -> e.getValue().size()))
            .map(e -> e.getKey() + " " + Decimals.plain(e.getValue().size()))
            .collect(Collectors.joining(", "));
  }

  private static String read(Round round) {
    if (round.unveiled() != null && !round.blind().isEmpty()) {
      return new TreeMap<>(round.blind())
          .entrySet().stream()
              .sorted(Comparator.comparingDouble(e -> e.getValue().middleMm()))
              .map(e -> e.getKey() + " " + e.getValue())
              .collect(Collectors.joining(", "));
    }
    Value result = round.result();
    return result == null
        ? "not yet"
        : result instanceof Value.None ? "could not be measured" : result.toString();
  }

  /** The readings taken alone that no one gap explains, to be repeated. */
  static List<String> apart(List<BenchRecord> benches, StepTitles titles) {
    List<String> out = new ArrayList<>();
    for (Row row : rows(benches, titles)) {
      Round round = row.round();
      Spread spread = round.unveiled() == null ? null : spread(round);
      if (spread != null && !spread.agree()) {
        out.add("How to hold and read: " + row.named() + ", bench " + row.bench());
      }
    }
    return out;
  }

  private static @Nullable Spread spread(Round round) {
    return Spread.of(List.copyOf(round.blind().values()), round.blind().size());
  }

  /** How far off each student's expected gaps were; students go by name. */
  static SheetPart byStudent(List<StudentRecord> students) {
    List<List<String>> rows = new ArrayList<>();
    for (StudentRecord student : students) {
      List<Tried> gaps =
          student.tries().stream()
              .filter(t -> !t.opened().turn() && t.result() instanceof Value.Gap)
              .toList();
      if (!gaps.isEmpty()) {
        rows.add(
            List.of(
                student.student(),
                String.valueOf(gaps.size()),
                off(gaps.subList(0, 1)),
                off(gaps.subList(gaps.size() - 1, gaps.size())),
                own(gaps)));
      }
    }
    boolean alone = rows.stream().anyMatch(row -> !row.get(ALONE).isEmpty());
    List<String> head = List.of("Student", "Gaps", "First off by", "Last off by", "Read alone");
    return SheetPart.grid(
        "Spread by student",
        "No gap was predicted and read yet.",
        "How far a gap was expected outside of what was read"
            + (alone
                ? "; and how far a student's own reading lay from the bench's, by its middle."
                : "."),
        alone ? head : head.subList(0, ALONE),
        alone ? rows : rows.stream().map(row -> row.subList(0, ALONE)).toList());
  }

  private static String off(List<Tried> gaps) {
    double size = gaps.get(0).prediction().size();
    Bracket bracket = gaps.get(0).result() instanceof Value.Gap gap ? gap.bracket() : null;
    if (bracket == null) {
      return "";
    }
    String far = mm(Math.max(0, Math.max(bracket.lowMm() - size, size - bracket.highMm())));
    return far.equals(mm(0)) ? "nothing" : far;
  }

  private static String own(List<Tried> gaps) {
    OptionalDouble mean =
        gaps.stream()
            .filter(t -> t.own() != null && t.own().bounded())
            .filter(t -> t.result() instanceof Value.Gap gap && gap.bracket().bounded())
            .mapToDouble(Spreads::beside)
            .average();
    if (mean.isEmpty()) {
      return "";
    }
    String far = mm(Math.abs(mean.getAsDouble()));
    return far.equals(mm(0)) ? "the same" : far + (mean.getAsDouble() > 0 ? " larger" : " smaller");
  }

  private static double beside(Tried tried) {
    Bracket own = tried.own();
    return own != null && tried.result() instanceof Value.Gap gap
        ? own.middleMm() - gap.bracket().middleMm()
        : 0;
  }

  private static String mm(double value) {
    return Decimals.print(value, DIGITS) + " mm";
  }
}
