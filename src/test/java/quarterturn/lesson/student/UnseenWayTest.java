package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterturn.lesson.DemoCourse;
import quarterturn.lesson.Round;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.session.Prompt;
import quarterturn.session.Question;

/**
 * Before each turn its way is predicted, and from the reading that asks for it until then nothing
 * at the bench tells it. All necks are invented.
 */
@Tag("slow")
class UnseenWayTest {
  private static final String WAY =
      "(?i)\\b(tighten|loosen|tightening|loosening|tighter|looser)\\b";
  private static final int MOST = 400;

  @TempDir Path folder;

  /** What was shown since the last reading. */
  private final List<String> shown = new ArrayList<>();

  @ParameterizedTest
  @EnumSource(NamedNeck.class)
  void inAReliefLesson(NamedNeck neck) throws Exception {
    play("relief", neck);
  }

  @ParameterizedTest
  @EnumSource(NamedNeck.class)
  void inAReliefCheckThatGoesOn(NamedNeck neck) throws Exception {
    play("relief-check", neck);
  }

  private void play(String procedure, NamedNeck neck) throws Exception {
    DemoCourse.Played played = DemoCourse.on(neck, procedure, folder, "Ana");
    try (LessonSession session = played.session()) {
      BenchDialogue dialogue = new BenchDialogue(session);
      for (int i = 0; i < MOST; i++) {
        dialogue.look();
        Question question = dialogue.question();
        if (question != null) {
          dialogue.take(answer(question));
          continue;
        }
        Prompt prompt = session.prompt();
        if (prompt.ended()) {
          break;
        }
        if (prompt instanceof Prompt.Measure) {
          shown.clear();
        }
        shown.add(prompt + " " + session.overview().place());
        if (prompt instanceof Prompt.TurnRod) {
          Round way = session.lesson().pending(true);
          assertWithMessage("the way of this turn").that(way).isNotNull();
        }
        session.answer(played.truth().get());
      }
      assertThat(session.prompt().ended()).isTrue();
    }
  }

  private String answer(Question question) {
    if (!(question instanceof Question.Rows rows)) {
      return question instanceof Question.Show ? "" : "so";
    }
    boolean way = rows.wants().startsWith("Tighten");
    if (way) {
      for (String text : shown) {
        assertWithMessage(text).that(text).doesNotContainMatch(WAY);
      }
    }
    return way ? "tighten" : rows.unit().equals("mm") ? "0.5" : "a";
  }
}
