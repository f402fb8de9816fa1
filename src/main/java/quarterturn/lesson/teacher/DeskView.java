package quarterturn.lesson.teacher;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Keep;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Order;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Ref;
import quarterturn.lesson.StepSpread;
import quarterturn.lesson.Waiting;
import quarterturn.lesson.store.WriterLog;

/**
 * What a teacher sees of a lesson: a pure function of the files, in whatever order they were read.
 *
 * @param rows a bench each: stops first, then what waits longest
 * @param spreads what was predicted and read, a step each
 * @param given every order of every desk, and what became of it
 */
public record DeskView(List<Row> rows, List<StepSpread> spreads, List<Given> given) {
  /** The answer shown for a bench that has not answered an order. */
  public static final String NOT_SEEN = "not seen yet";

  /** The answer shown for a bench that was left in order before it answered. */
  public static final String LEFT = "had left";

  /** The answer shown for a bench that has taken an order. */
  public static final String TAKEN = "taken";

  /**
   * A bench as a desk shows it.
   *
   * @param releases what the desk may let go on, stops first; the value is to be read back
   */
  public record Row(BenchLesson bench, Waiting waiting, List<Keep> releases) {}

  /**
   * An order and what the benches said to it, in words.
   *
   * @param answers by the bench's id; a bench that has not answered yet has "not seen yet"
   */
  public record Given(Ref ref, Order order, Map<String, String> answers) {}

  /** The view of one lesson, as its files alone tell it. */
  public static DeskView of(Plan plan, List<WriterLog> logs) {
    return of(plan, logs, Map.of());
  }

  /**
   * The view of one lesson.
   *
   * @param logs all files at hand; those of other lessons are passed over
   * @param heard when each bench was last heard of
   */
  static DeskView of(Plan plan, List<WriterLog> logs, Map<String, Heard> heard) {
    List<WriterLog> of = of(plan.lesson(), logs);
    List<WriterLog> benches = benches(plan, logs);
    List<BenchLesson> lessons =
        benches.stream().map(l -> BenchLesson.of(writer(l), plan.level(), l.events())).toList();
    return new DeskView(rows(lessons, heard), StepSpread.of(lessons), given(of, benches, lessons));
  }

  private static List<WriterLog> of(String lesson, List<WriterLog> logs) {
    return logs.stream()
        .filter(l -> l.header() != null && l.header().lesson().equals(lesson))
        .sorted(Comparator.comparing(DeskView::writer))
        .toList();
  }

  /** The files of a lesson's benches, by their ids. */
  public static List<WriterLog> benches(Plan plan, List<WriterLog> logs) {
    return of(plan.lesson(), logs).stream()
        .filter(l -> l.header() != null && l.header().role() == WriterLog.Part.BENCH)
        .toList();
  }

  static String writer(WriterLog log) {
    return log.header() == null ? "" : log.header().writer();
  }

  private static List<Row> rows(List<BenchLesson> lessons, Map<String, Heard> heard) {
    return lessons.stream()
        .map(
            l ->
                new Row(
                    l,
                    Waiting.of(l, clock(heard.get(l.bench()))),
                    l.over() ? List.of() : l.keptBy()))
        .sorted(
            Comparator.comparing((Row row) -> row.waiting().kind())
                .thenComparing(row -> row.waiting().howLong(), Comparator.reverseOrder())
                .thenComparing(row -> row.bench().bench()))
        .toList();
  }

  private static @Nullable Instant clock(@Nullable Heard heard) {
    return heard == null ? null : heard.clock();
  }

  private static List<Given> given(
      List<WriterLog> all, List<WriterLog> benches, List<BenchLesson> lessons) {
    Map<Ref, Order> orders = new TreeMap<>();
    Map<Ref, Map<String, String>> answers = new TreeMap<>();
    for (WriterLog bench : benches) {
      boolean gone = lessons.get(benches.indexOf(bench)).gone();
      Map<Ref, Order> own = WriterLog.orders(writer(bench), all);
      orders.putAll(own);
      for (Ref ref : own.keySet()) {
        String answer = answer(bench.events(), ref);
        answers
            .computeIfAbsent(ref, r -> new TreeMap<>())
            .put(writer(bench), gone && answer.equals(NOT_SEEN) ? LEFT : answer);
      }
    }
    List<Given> out = new ArrayList<>();
    orders.forEach(
        (ref, order) -> out.add(new Given(ref, order, answers.getOrDefault(ref, Map.of()))));
    return out;
  }

  private static String answer(List<LessonEvent> events, Ref ref) {
    for (LessonEvent event : events) {
      if (event instanceof LessonEvent.Accepted accepted && accepted.ref().equals(ref)) {
        return TAKEN;
      }
      if (event instanceof LessonEvent.Declined declined && declined.ref().equals(ref)) {
        return declined.why().words();
      }
    }
    return NOT_SEEN;
  }
}
