package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.DemoCourse;
import quarterturn.lesson.Direction;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Played;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Questioning;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.student.BenchDialogue;
import quarterturn.lesson.student.Gate;
import quarterturn.lesson.student.LessonSession;
import quarterturn.lesson.student.Returning;
import quarterturn.session.ExitStatus;
import quarterturn.unit.Dates;

/** A bench in a lesson in typed lines, on an invented neck. */
class LessonLineTest {
  private static final String SEEN = "What the gauges show";
  private static final List<String> TO_THE_READING = List.of("", "u", "", "done");

  @TempDir Path folder;
  private final StringWriter shown = new StringWriter();
  private final List<Duration> pauses = new ArrayList<>();

  /** Lines from a pipe whose pauses pass at once. */
  private final class Lines implements LineSource {
    private final PipeSource pipe;

    Lines(List<String> typed, PrintWriter out) {
      String text = typed.stream().map(line -> line + "\n").collect(Collectors.joining());
      this.pipe = new PipeSource(new StringReader(text), out, false);
    }

    @Override
    public @Nullable String readLine(String prompt, List<String> words) throws IOException {
      return pipe.readLine(prompt, words);
    }

    @Override
    public @Nullable String readLine(
        String prompt, List<String> words, Seen seen, BooleanSupplier changed)
        throws IOException, StopKeyException, ChangedException {
      return pipe.readLine(prompt, words, seen, changed);
    }

    @Override
    public void pause(Duration time) {
      pauses.add(time);
    }

    @Override
    public boolean typedByHand() {
      return false;
    }

    @Override
    public int width() {
      return 200;
    }
  }

  private String play(LessonSession session, String... typed) throws Exception {
    List<String> lines = new ArrayList<>(TO_THE_READING);
    lines.addAll(Arrays.asList(typed));
    PrintWriter out = new PrintWriter(shown);
    try (session) {
      int status =
          LessonLine.run(
              session, "lesson join x", new Lines(lines, out), out, new Dates(ZoneOffset.UTC));
      assertThat(status).isEqualTo(ExitStatus.DONE);
    }
    out.flush();
    return shown.toString();
  }

  @Test
  void nothingIsShownBeforeTheLastPredictionIsLocked() throws Exception {
    String said =
        play(
            DemoCourse.session(folder, false, "Ana", "Ben"),
            "help",
            "2 0.5 a long curve, 1 much",
            "0.7 it looks like a card",
            "quit");
    int seen = said.indexOf(SEEN);
    assertThat(seen).isGreaterThan(said.indexOf("Ana: locked."));
    assertThat(said).contains("The gap in mm. 1 Ana, 2 Ben > (not shown)");
    // What was typed before a slip stays, and only the rest is asked again.
    assertThat(said)
        .contains(
            "Not taken: Ben stays. 1 Ana: That is no answer here. The gap in mm, for example"
                + " 0.35.\nThe gap in mm. 1 Ana > ");
    assertThat(said).contains("Go on later with:\nlesson join x");
  }

  @Test
  void whatIsReadAloneIsNotShownUntilAllHaveRead() throws Exception {
    String said =
        play(
            DemoCourse.session(folder, true, "Ana", "Ben"),
            "1 0.5, 2 0.6",
            "Ben",
            "Ana",
            "0.63 passes 0.68 lifts",
            "nonsense",
            "0.60 passes 0.65 lifts",
            "0.60 passes 0.65 lifts",
            "quit");
    assertThat(said).contains("Ana, your reading > (not shown)");
    assertThat(said).doesNotContain("nonsense");
    int spread = said.indexOf("You read 0.60 to 0.65 mm; 0.63 to 0.68 mm.");
    assertThat(spread).isGreaterThan(said.indexOf("Ben: taken."));
    assertThat(said.indexOf("0.63")).isEqualTo(said.indexOf("0.63 to 0.68", spread));
    assertThat(said.indexOf("Their mean is")).isGreaterThan(spread);
    assertThat(said.indexOf("Now agree on one reading")).isGreaterThan(spread);
  }

  @Test
  void predictionAndResultStandSideBySideAndNothingIsToldBeforeAllHaveSpoken() throws Exception {
    String said =
        play(
            DemoCourse.session(folder, false, "Ana", "Ben"),
            "1 0.70 a card fits",
            "0.2 it looks straight",
            "0.70 passes 0.75 lifts",
            "2 b",
            "3 a",
            "d",
            "a",
            "quit");
    int both = said.indexOf("Predicted: Ana 0.7 mm; Ben 0.2 mm.\nIt read: 0.70 to 0.75 mm.");
    assertThat(both).isGreaterThan(0);
    int told = said.indexOf("It came as predicted by Ana.");
    assertThat(told).isGreaterThan(said.indexOf("Ana: taken."));
    assertThat(said.indexOf("Ana: taken.")).isGreaterThan(said.indexOf("Ben: taken."));
    assertThat(said).contains("\"d\" is no answer here. The letter, a to b.");
    assertThat(said.indexOf("A good answer: No. Read it as it is played")).isGreaterThan(told);
  }

  @Test
  void aReadingThatWasTypedWrongIsTakenBackBeforeAnybodyThinksAboutIt() throws Exception {
    String said =
        play(
            DemoCourse.session(folder, false, "Ana"),
            "0.70 a card fits",
            "0.20 passes 0.25 lifts",
            "back",
            "0.70 passes 0.75 lifts",
            "b",
            "quit");
    assertThat(said).contains("It read: 0.20 to 0.25 mm.");
    assertThat(said).contains("The last answer is taken back.");
    assertThat(said).contains("It read: 0.70 to 0.75 mm.");
    assertThat(said).contains("It came as predicted by Ana.");
  }

  @Test
  void severalReadingsOnOneLineAreNotTakenAhead() throws Exception {
    String said =
        play(
            DemoCourse.session(folder, false, "Ana"),
            "0.70 a card fits",
            "0.70..0.75; 0.65..0.70",
            "relief low .72 high .68",
            "quit");
    assertThat(said).doesNotContain("Taken:");
    assertThat(said).doesNotContain("Kept until");
  }

  @Test
  void stopWorksAtEveryLineAndTheBenchGoesOnWhenItIsReleased() throws Exception {
    LessonSession session = DemoCourse.session(folder, false, "Ana");
    Thread teacher =
        new Thread(
            () -> {
              try {
                while (session.lesson().keptBy().isEmpty()) {
                  Thread.sleep(20);
                }
                DemoCourse.release(session, folder);
              } catch (Exception e) {
                throw new IllegalStateException(e);
              }
            });
    teacher.start();
    String said = play(session, "stop  the leaf is bent", "0.70 a card fits", "quit");
    teacher.join();
    assertThat(said).contains("STOPPED: the leaf is bent.");
    assertThat(said).contains("The teacher lets this bench go on.");
    assertThat(said.indexOf(SEEN)).isGreaterThan(said.indexOf("Ana: locked."));
  }

  @Test
  void studentsComeAndGoAtAnyLine() throws Exception {
    String said =
        play(
            DemoCourse.session(folder, false, "Ana"),
            "come Ben",
            "who",
            "gone Ana",
            "0.70 a card fits",
            "quit");
    assertThat(said).contains("Ben is at this bench now.");
    assertThat(said).contains("Here: Ana, Ben.");
    assertThat(said).contains("In this part: Ana turns and writes down; Ben reads and looks on.");
    assertThat(said).contains("Ben: locked.");
  }

  @Test
  void aBenchWithNobodyAtItAsksWhoIsThere() throws Exception {
    PrintWriter out = new PrintWriter(shown);
    try (LessonSession session = DemoCourse.session(folder, false)) {
      LessonLine.run(
          session,
          "x",
          new Lines(List.of("", "Ana, Ben", "quit"), out),
          out,
          new Dates(ZoneOffset.UTC));
      assertThat(session.lesson().students()).containsExactly("Ana", "Ben").inOrder();
      assertThat(session.gate()).isInstanceOf(Gate.Open.class);
    }
    assertThat(pauses).isEmpty();
  }

  @Test
  void aWrongWayIsAnsweredAndComesBack() throws Exception {
    LessonSession session = DemoCourse.session(folder, false, "Ana");
    Played.until(
        session, folder, s -> s.gate() instanceof Gate.Predict now && now.round().opened().turn());
    session.predict(
        ((Gate.Predict) session.gate()).round().n(),
        "Ana",
        new Prediction(Direction.LESS, 0, null, false));
    Played.until(
        session, folder, s -> s.gate() instanceof Gate.Reflect now && now.round().opened().turn());
    BenchDialogue dialogue = new BenchDialogue(session);
    dialogue.look();
    dialogue.take("a guess");
    dialogue.look();
    assertThat(requireNonNull(dialogue.question()).lines())
        .containsExactly(
            "The turn was: tighten 1/8 turn. Tightening an ordinary rod makes the gap smaller.");
    String lesson = session.plan().lesson();
    session.close();
    List<WriterLog> logs = LessonFolder.read(folder).logs();
    assertThat(Returning.after(logs, lesson, "Ana")).containsExactly(Questioning.WAY.question());
  }

  @Test
  void theNeckIsShownOnceNobodyIsAtWorkOnItAnyMore() throws Exception {
    LessonSession session = DemoCourse.session(folder, false, "Ana");
    String lesson = session.plan().lesson();
    WriterLog.Header other = new WriterLog.Header(lesson, "right", WriterLog.Part.BENCH);
    try (WriterFile right = WriterFile.create(folder, other)) {
      right.append(List.of(new LessonEvent.Joined(Instant.EPOCH, "right")));
      session.look();
      Played.until(session, folder, s -> s.coming().ended());
      assertThat(session.prompt().said().notes().toString())
          .contains("How the neck really was is shown once");
      assertThat(session.prompt().said().notes().toString()).doesNotContain("as it really was");
      right.append(List.of(new LessonEvent.Left(Instant.EPOCH, true)));
      session.look();
      assertThat(session.prompt().said().notes().toString()).contains("The neck as it really was");
    }
    session.close();
    List<LessonEvent.Left> left =
        LessonFolder.read(folder).logs().stream()
            .flatMap(log -> log.all(LessonEvent.Left.class))
            .toList();
    assertThat(left.stream().map(LessonEvent.Left::finished)).containsExactly(true, true);
  }
}
