package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.lesson.Keep;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.Order;
import quarterturn.lesson.Plan;
import quarterturn.lesson.PlanPart;
import quarterturn.lesson.Planning;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;

/**
 * How much is entered at a bench in a relief lesson on the neck that is planned by itself, which
 * takes two turns. Each name, value and choice counts as one, and so does a page that is only read.
 */
@Tag("slow")
class LessonLengthTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-03-01T09:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private @Nullable PracticeBench practice;
  private int entered;
  private int turns;

  /** What could be read at the bench since the last reading, without what asks for the way. */
  private final List<String> seen = new ArrayList<>();

  private LessonSession join(String questions) throws Exception {
    Planning.Known known =
        new Planning.Known("relief", Set.of("relief"), Set.of("bass-34"), step -> false);
    Plan plan = Planning.of("2027-03-01-1-a", Map.of(PlanPart.QUESTIONS, questions), known);
    WriterLog.Header header = new WriterLog.Header(plan.lesson(), "left", WriterLog.Part.BENCH);
    LessonBench bench = LessonBench.at(WriterFile.create(folder, header), plan.level());
    Sessions sessions = new Sessions(Store.at(folder.resolve("left")), null, CLOCK);
    StoredSessions stored =
        new StoredSessions(sessions, plan, requireNonNull(plan.forBench("left")));
    BenchSessions course =
        n -> {
          BenchSessions.Run run = stored.open(n);
          practice = run.practice();
          return run;
        };
    return new LessonSession(bench, plan, folder, CLOCK, course);
  }

  private void play(LessonSession session, List<String> students) throws Exception {
    BenchDialogue dialogue = new BenchDialogue(session);
    while (true) {
      dialogue.look();
      Question question = dialogue.question();
      if (question instanceof Question.Hold) {
        release(session);
      } else if (question != null) {
        dialogue.take(answer(question, students));
      } else if (session.prompt().ended()) {
        assertThat(session.prompt()).isInstanceOf(Prompt.Done.class);
        assertThat(session.next()).isFalse();
        return;
      } else {
        Prompt prompt = session.prompt();
        see(prompt);
        turns += prompt instanceof Prompt.TurnRod ? 1 : 0;
        entered++;
        session.answer(requireNonNull(practice).truth());
      }
    }
  }

  /** The teacher lets each turn go on, at a desk. */
  private void release(LessonSession session) throws Exception {
    String lesson = session.plan().lesson();
    Keep keep = session.lesson().keptBy().get(0);
    try (WriterFile desk = WriterFile.of(folder, lesson, "desk", WriterLog.Part.BOARD)) {
      Order order = new Order.Release(keep.ref(), keep.value());
      desk.append(List.of(new LessonEvent.Ordered(CLOCK.instant(), "left", order)));
    }
  }

  private String answer(Question question, List<String> students) {
    if (question instanceof Question.Rows rows) {
      int missing = (int) rows.rows().stream().filter(row -> !row.done()).count();
      entered += missing;
      boolean way = rows.unit().isEmpty() && rows.wants().startsWith("Tighten");
      if (way) {
        assertWithMessage("seen")
            .that(String.join("\n", seen))
            .doesNotContainMatch("(?i)tighten|loosen|clockwise");
        assertThat(String.join("\n", rows.lines())).doesNotContainMatch("(?i)tighten|loosen");
      }
      String one = way ? "tighten" : rows.unit().equals("mm") ? "0.50" : "a";
      return rows.rows().stream()
          .map(row -> row.number() + " " + one)
          .collect(Collectors.joining(", "));
    }
    boolean names = question.title().equals("Welcome");
    entered += names ? students.size() : 1;
    return names ? String.join(", ", students) : question instanceof Question.Show ? "" : "so";
  }

  private void see(Prompt prompt) {
    if (prompt instanceof Prompt.Measure) {
      seen.clear();
    }
    if (!(prompt instanceof Prompt.TurnRod)) {
      seen.add(prompt.said().text());
      seen.add(String.valueOf(prompt.said().why()));
      seen.addAll(prompt.said().notes());
    }
  }

  @ParameterizedTest
  @CsvSource({"2,some,60", "8,some,140", "2,few,50", "8,all,140"})
  void aReliefLessonOfTwoTurnsIsShort(int count, String questions, int most) throws Exception {
    List<String> students = IntStream.rangeClosed(1, count).mapToObj(n -> "Student" + n).toList();
    try (LessonSession session = join(questions)) {
      play(session, students);
    }
    System.out.printf(
        "A relief lesson of %d turns with %s questions: %d students enter %d (at most %d).%n",
        turns, questions, count, entered, most);
    assertThat(turns).isEqualTo(2);
    assertThat(entered).isAtMost(most);
    List<WriterLog> logs = LessonFolder.read(folder).logs();
    WriterLog bench = logs.get(1);
    assertThat(LessonProof.of(bench, logs)).isEmpty();
    // Each predicts the first reading, and of each turn the way and what it will have done.
    assertThat(bench.all(LessonEvent.Predicted.class).count()).isEqualTo(5L * count);
  }
}
