package quarterturn.script;

import static com.google.common.truth.Truth.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.FutureTask;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.DemoCourse;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.student.LessonSession;
import quarterturn.lesson.teacher.Desk;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.Practice;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.store.FormField;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.HomeDialogues;
import quarterturn.session.store.InstrumentDialogue;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;

/** What src/docs/json-lines.md shows of questions in JSON lines happens like that. */
class ScriptQuestionsTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);

  /** The lines of one example; the first is 0. */
  private static List<String> example(int number) throws Exception {
    String text = Files.readString(Path.of("src/docs/json-lines.md"));
    String after = text.substring(text.indexOf("`ScriptQuestionsTest`"));
    return after.split("```\n", -1)[2 * number + 1].lines().toList();
  }

  private static InputStream typed(List<String> example) {
    StringBuilder lines = new StringBuilder();
    example.stream()
        .filter(line -> line.startsWith("< "))
        .forEach(line -> lines.append(line.substring(2)).append('\n'));
    return new ByteArrayInputStream(lines.toString().getBytes(StandardCharsets.UTF_8));
  }

  private void happened(List<String> example) {
    List<String> shown = example.stream().filter(line -> line.startsWith("> ")).toList();
    List<String> said = bytes.toString(StandardCharsets.UTF_8).lines().toList();
    assertThat(said).hasSize(shown.size());
    for (int i = 0; i < said.size(); i++) {
      assertThat(said.get(i)).startsWith(shown.get(i).substring(2).replaceFirst("\\.\\.\\.$", ""));
    }
  }

  @Test
  void anInstrumentIsAskedFor() throws Exception {
    List<String> example = example(0);
    InstrumentDialogue dialogue =
        new InstrumentDialogue("my-bass", Map.of(), new Shelf(null).rules().kinds());
    // Done keeps the rest, so the example ends where all is answered.
    assertThat(new ScriptFace(typed(example), out).ask(dialogue)).isEqualTo(Dialogue.End.ANSWERED);
    assertThat(dialogue.fields()).containsEntry(FormField.KIND, "bass-34");
    happened(example);
  }

  @Test
  void whoLeavesBeforeTheEndIsToldThatNothingIsKept() throws Exception {
    InstrumentDialogue dialogue =
        new InstrumentDialogue("my-bass", Map.of(), new Shelf(null).rules().kinds());
    List<String> leaves = List.of("< {\"answer\":\"bass-34\"}", "< {\"answer\":\"quit\"}");
    assertThat(new ScriptFace(typed(leaves), out).ask(dialogue)).isEqualTo(Dialogue.End.LEFT);
    assertThat(bytes.toString(StandardCharsets.UTF_8)).endsWith("{\"left\":\"nothing is kept\"}\n");
  }

  @Test
  void aBenchJoinsALesson() throws Exception {
    List<String> example = example(1);
    try (LessonSession session = DemoCourse.session(folder, false)) {
      assertThat(new ScriptFace(typed(example), out).lesson(session)).isEqualTo(ExitStatus.DONE);
    }
    happened(example);
  }

  private Desk desk() throws Exception {
    InventedLesson.write(folder);
    Clock clock = Clock.fixed(InventedLesson.NOW, ZoneOffset.UTC);
    return Desk.open(folder, "desk", clock, (plan, logs) -> folder, InventedLesson.TITLES);
  }

  @Test
  void aTeacherGivesOrders() throws Exception {
    List<String> example = example(3);
    try (Desk desk = desk()) {
      DeskDialogue dialogue = new DeskDialogue(desk);
      assertThat(new ScriptFace(typed(example), out).desk(dialogue)).isEqualTo(ExitStatus.DONE);
    }
    happened(example);
  }

  /** The script waits, and the benches take the order meanwhile. */
  @Test
  void whatHappensAtTheBenchesIsToldByItself() throws Exception {
    PipedOutputStream script = new PipedOutputStream();
    try (Desk desk = desk();
        PipedInputStream in = new PipedInputStream(script)) {
      DeskDialogue dialogue = new DeskDialogue(desk);
      FutureTask<Integer> face = new FutureTask<>(() -> new ScriptFace(in, out).desk(dialogue));
      new Thread(face).start();
      script.write("{\"answer\":\"release blue\"}\n".getBytes(StandardCharsets.UTF_8));
      script.flush();
      said("Released Blue: the stop.");
      InventedLesson.take(folder, InventedLesson.NOW);
      said("Blue goes on.");
      script.close();
      assertThat(face.get()).isEqualTo(ExitStatus.DONE);
    }
    said("{\"left\":\"The desk is left;");
  }

  /** Waits, at most a minute, until something has been said. */
  private void said(String words) throws Exception {
    for (int i = 0; i < 600 && !bytes.toString(StandardCharsets.UTF_8).contains(words); i++) {
      Thread.sleep(100);
    }
    assertThat(bytes.toString(StandardCharsets.UTF_8)).contains(words);
  }

  @Test
  void theHomeViewLeadsToARehearsalInTheSameLines() throws Exception {
    List<String> example = example(2);
    Sessions sessions = new Sessions(Store.at(folder), null, Clock.systemUTC());
    HomeDialogue dialogue = HomeDialogues.of(List.of(), List.of());
    ScriptFace face = new ScriptFace(typed(example), out);
    assertThat(face.ask(dialogue)).isEqualTo(Dialogue.End.ANSWERED);
    assertThat(dialogue.choice()).isEqualTo(new HomeDialogue.Choice.Rehearse(false));
    assertThat(face.run(Practice.usual(sessions).on(1))).isEqualTo(ExitStatus.DONE);
    happened(example);
    assertThat(bytes.toString(StandardCharsets.UTF_8))
        .contains(
            "\"options\":[\"start\",\"setup\",\"relief-check\",\"buzz\",\"stage\",\"rehearse\","
                + "\"watch\",\"history\",\"words\",\"quit\"],"
                + "\"listed\":[{\"name\":\"start\",\"label\":\"Neck relief\",\"detail\":");
  }

  @Test
  void aTeacherIsWaitedForAndTheBenchGoesOnByItself() throws Exception {
    try (LessonSession session = DemoCourse.session(folder, false, "Ana")) {
      session.stop("it creaks");
      Thread teacher =
          new Thread(
              () -> {
                try {
                  DemoCourse.release(session, folder);
                } catch (Exception e) {
                  throw new IllegalStateException(e);
                }
              });
      teacher.start();
      // What is no stop waits for its turn.
      List<String> lines = List.of("< {\"answer\":true}", "< {\"answer\":\"quit\"}");
      assertThat(new ScriptFace(typed(lines), out).lesson(session)).isEqualTo(ExitStatus.DONE);
      teacher.join();
    }
    String said = bytes.toString(StandardCharsets.UTF_8);
    assertThat(said).contains("{\"prompt\":\"tell\"");
  }
}
