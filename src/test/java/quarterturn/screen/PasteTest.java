package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.DemoCourse;
import quarterturn.lesson.student.LessonSession;
import quarterturn.screen.page.PageTest;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Effect;
import quarterturn.screen.state.Field;
import quarterturn.screen.state.Layer;
import quarterturn.screen.state.Model;
import quarterturn.screen.state.Next;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Question;
import quarterturn.session.store.HomeDialogues;
import quarterturn.unit.Pasted;

/** A paste goes into a field, up to a limit that is told of; it presses no key anywhere. */
class PasteTest {
  private static final Effect NONE = new Effect.None();

  /** With line ends, and every letter that means something somewhere. */
  private static final String KEYS = "u\r\ny\rn\r1\rz\rq\ry\r \t\u001b[B\u0015\r";

  private static Key paste(String raw) {
    return new Key.Paste(Pasted.of(raw));
  }

  @Test
  void inNoViewOfASessionDoesItPressAKey() {
    for (PageTest.View view : PageTest.views()) {
      Model before = view.model();
      Next next = Update.key(before, paste(KEYS));
      Model after = next.model();
      assertWithMessage(view.name()).that(next.effect()).isEqualTo(NONE);
      assertWithMessage(view.name()).that(after.layer()).isEqualTo(before.layer());
      boolean field = before.layer() == Layer.NONE && before.draft().typing();
      assertWithMessage(view.name()).that(after.message()).isEqualTo(field ? "" : Pasted.NOWHERE);
      if (!field) {
        assertWithMessage(view.name()).that(after.draft()).isEqualTo(before.draft());
      }
    }
  }

  @Test
  void itIsTypedWhereTheCursorIs() {
    Field field = Field.of("ad").with(Key.Named.LEFT).with(paste("b\rc"));
    assertThat(field).isEqualTo(new Field("ab; cd", 5));
  }

  @Test
  void whatDoesNotFitIsRefusedWithAWord() {
    Model model = PageTest.model(Invented.MEASURE, 2, 2);
    Model most = Update.key(model, paste("1".repeat(Pasted.MOST))).model();
    assertThat(((Draft.Reading) most.draft()).field().text()).hasLength(Pasted.MOST);
    assertThat(most.message()).isEmpty();
    Model more = Update.key(most, paste("2")).model();
    assertThat(more.draft()).isEqualTo(most.draft());
    assertThat(more.message()).isEqualTo(Pasted.REFUSED);
    Model much = Update.key(model, paste("1".repeat(48_000))).model();
    assertThat(((Draft.Reading) much.draft()).field().text()).hasLength(Pasted.MOST);
    assertThat(much.message()).isEqualTo(Pasted.REFUSED);
    Model typed = Update.key(much, new Key.Typed('3')).model();
    assertThat(typed.draft()).isEqualTo(much.draft());
  }

  @Test
  void atAQuestionItIsTyped() {
    QuestionView asked =
        new QuestionView(new Question.Words("A title", List.of(), "Which way?", "Type it."));
    assertThat(asked.answer(paste(KEYS))).isNull();
    assertThat(asked.leaves(paste("q"))).isFalse();
    assertThat(asked.key(paste("one\rtwo")).field().text()).isEqualTo("one; two");
    assertThat(asked.key(paste("1".repeat(5000))).message()).isEqualTo(Pasted.REFUSED);
  }

  @Test
  void atAListItMarksNothing() {
    Question home = HomeDialogues.of(List.of(), List.of("my-bass", "blue")).question();
    QuestionView list = new QuestionView(Objects.requireNonNull(home));
    assertThat(list.answer(paste("2\r"))).isNull();
    assertThat(list.leaves(paste("q"))).isFalse();
    assertThat(list.key(paste("2\r"))).isEqualTo(list.saying(Pasted.NOWHERE));
  }

  @Test
  void atALessonsCardItIsTyped(@TempDir Path folder) throws Exception {
    try (LessonSession session = DemoCourse.session(folder, false)) {
      LessonCards cards = new LessonCards(session, "lesson join x", () -> 0, "");
      cards.look();
      assertThat(cards.key(paste("Ana\rBen\r"))).isEqualTo(NONE);
      cards.look();
      assertThat(cards.draw(session.overview(), 80, 24).text()).contains("Ana; Ben");
      assertThat(cards.card()).isNotNull();
    }
  }
}
