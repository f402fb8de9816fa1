package quarterturn.lesson;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.student.Moment;
import quarterturn.procedure.LessonQuestion;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** A lesson of our own invention, in small pieces. */
public final class Demo {
  public static final Instant T = Instant.parse("2027-03-01T09:00:00Z");
  public static final String LESSON = "2027-03-01-first-turn";
  public static final String BENCH = "bench-a";
  public static final Value.Gap GAP = gap(0.30);
  public static final Plan PLAN =
      new Plan(
          LESSON,
          "The first turn",
          List.of("relief"),
          List.of(new Plan.Setup(null, "bass-34", NamedNeck.TOO_MUCH, 7)),
          Level.WORKED,
          true,
          List.of(),
          true,
          List.of(),
          Map.of(),
          Questioning.SOME);

  private Demo() {}

  public static Value.Gap gap(double low) {
    return new Value.Gap(new Bracket(low, low + 0.05));
  }

  public static Spot spot(String step, int asked) {
    return new Spot("relief", step, "Measure", asked);
  }

  public static PromptText said(String step) {
    return new PromptText(
        "relief", step, "Measure", "Do it.", "So.", List.of(), null, List.of("Note."));
  }

  public static Prompt measure() {
    return new Prompt.Measure(
        said("read"), Quantity.RELIEF, List.of(1, 16), 8, Which.LOWEST, "E1", 0.05);
  }

  public static Prompt turn() {
    Prompt.Expected expected = new Prompt.Expected(0.2, 0.4);
    return new Prompt.TurnRod(said("turn"), Turn.EIGHTH, Turn.QUARTER, expected, false, Set.of());
  }

  public static Moment moment(Prompt prompt, int asked, @Nullable Value before) {
    Spot spot = spot(prompt.said().step(), asked);
    return moment(spot, prompt, before, Map.of(), false);
  }

  public static Moment moment(
      Spot spot, Prompt prompt, @Nullable Value before, Map<Integer, Value> came, boolean again) {
    LessonQuestion.Idea idea = new LessonQuestion.Idea("More.", "No.");
    LessonQuestion asks =
        new LessonQuestion(LessonQuestion.Kind.IDEA, "What if?", null, "Less.", List.of(idea));
    return new Moment(spot, prompt, before, 0.05, came, again, false, false, List.of(asks));
  }

  public static Prediction guess(Direction direction, double size) {
    return new Prediction(direction, size, "because", false);
  }

  /** Which way a turn is expected to go. */
  public static Prediction way(Direction direction) {
    return new Prediction(direction, 0, null, false);
  }

  public static LessonEvent came(String student) {
    return new LessonEvent.Came(T, student);
  }

  public static LessonEvent opened(String step, int asked, boolean blind) {
    return new LessonEvent.Opened(T, spot(step, asked), false, blind, null, 0.05, "What if?");
  }

  public static LessonEvent predicted(int round, String student) {
    return new LessonEvent.Predicted(T, round, student, guess(Direction.MORE, 0.3));
  }

  public static LessonEvent shown(int round) {
    return new LessonEvent.Shown(T, round);
  }

  public static LessonEvent blindRead(int round, String student) {
    return new LessonEvent.BlindRead(T, round, student, GAP.bracket());
  }

  public static LessonEvent resulted(int round) {
    return new LessonEvent.Resulted(T, round, GAP);
  }

  public static LessonEvent release(Ref keeps, Value value) {
    return new LessonEvent.Ordered(T, BENCH, new Order.Release(keeps, value));
  }

  static BenchLesson lesson(LessonEvent... events) {
    return BenchLesson.of(BENCH, Level.WORKED, Arrays.asList(events));
  }

  public static WriterLog bench(String writer, LessonEvent... events) {
    return log(LESSON, writer, WriterLog.Part.BENCH, events);
  }

  public static WriterLog desk(String writer, LessonEvent... events) {
    return log(LESSON, writer, WriterLog.Part.BOARD, events);
  }

  public static WriterLog log(
      String lesson, String writer, WriterLog.Part role, LessonEvent... events) {
    return new WriterLog(
        new WriterLog.Header(lesson, writer, role), Arrays.asList(events), null, 0);
  }
}
