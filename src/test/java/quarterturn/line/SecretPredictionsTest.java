package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterturn.lesson.DemoCourse;
import quarterturn.lesson.Played;
import quarterturn.lesson.student.Gate;
import quarterturn.lesson.student.LessonSession;

/** What one student predicts is not to be seen on any face before all have. */
class SecretPredictionsTest {
  private static final String REASON = "wavy light";

  @TempDir Path folder;

  /** A bench with three students, of whom one has locked; two are left. */
  private LessonSession session() throws Exception {
    LessonSession session = DemoCourse.session(folder, false, "Ana", "Ben");
    Played.until(
        session,
        folder,
        s ->
            s.gate() instanceof Gate.Predict now
                && !now.round().predictions().isEmpty()
                && now.round().opened().turn());
    session.come("Cleo");
    return session;
  }

  private static void waitFor(AnyFace face, String text) throws InterruptedException {
    for (int i = 0; i < 2000 && !face.shown().contains(text); i++) {
      Thread.sleep(10);
    }
    assertThat(face.shown()).contains(text);
  }

  private static void give(AnyFace.Kind kind, AnyFace face, String line) throws Exception {
    face.type((kind == AnyFace.Kind.JSON ? "{\"answer\":\"" + line + "\"}" : line) + "\r");
  }

  @ParameterizedTest
  @EnumSource
  void noLineOfAStudentStaysForTheNext(AnyFace.Kind kind) throws Exception {
    try (LessonSession session = session()) {
      AnyFace face = kind.make();
      Thread thread = face.begin(session);
      waitFor(face, "2 Ben, 3 Cleo");
      give(kind, face, "2 losen " + REASON);
      waitFor(face, "is no answer here");
      String clears = kind == AnyFace.Kind.SCREEN ? "\u0015" : "";
      give(kind, face, clears + "2 loosen " + REASON);
      waitFor(face, "no turn. 3 Cleo");
      if (kind == AnyFace.Kind.TYPED) {
        face.type("\u001b[A\u001b[A\u0019");
        Thread.sleep(100);
      }
      for (int i = 0; i < 200 && face.shown().contains(REASON); i++) {
        // A page is painted row by row.
        Thread.sleep(10);
      }
      assertWithMessage(face.shown()).that(face.shown()).doesNotContain(REASON);
      assertThat(((Gate.Predict) session.gate()).missing()).containsExactly("Cleo");
      thread.interrupt();
    }
  }

  /** It can't take a line back, so that it moves it out of view. */
  @Test
  void aTerminalThatCanOnlyPrintScrollsItAway() throws Exception {
    StringWriter out = new StringWriter();
    PipeSource source = new PipeSource(new StringReader("0.6 so\n"), new PrintWriter(out), true);
    source.readLine("Ben > ", List.of(), LineSource.Seen.CLEARED, () -> false);
    assertThat(out.toString().lines().filter(String::isEmpty).count()).isGreaterThan(50);
  }
}
