package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.teacher.Desk;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.lesson.teacher.DeskView;
import quarterturn.lesson.teacher.Sight;
import quarterturn.screen.state.Effect;
import quarterturn.screen.state.Field;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Question;

/** The desk's pages and keys. */
class DeskPageTest {
  private static final DeskModel BENCHES = DeskModel.of(InventedLesson.sight());
  private static final Key ENTER = Key.Named.ENTER;

  @TempDir Path folder;
  private @Nullable Desk desk;

  /** The keys of a desk that was just opened. */
  private DeskKeys keys() throws Exception {
    if (desk == null) {
      InventedLesson.write(folder);
      Clock clock = Clock.fixed(InventedLesson.NOW, ZoneOffset.UTC);
      desk = Desk.open(folder, "desk", clock, (plan, logs) -> folder, InventedLesson.TITLES);
    }
    return new DeskKeys(new DeskDialogue(desk));
  }

  @AfterEach
  void close() throws Exception {
    if (desk != null) {
      desk.close();
    }
  }

  private static Effect press(DeskKeys keys, Key... pressed) {
    Effect effect = new Effect.None();
    for (Key key : pressed) {
      effect = keys.key(key);
    }
    return effect;
  }

  private static Key[] typed(String keys) {
    return keys.codePoints().mapToObj(Key.Typed::new).toArray(Key[]::new);
  }

  private DeskModel shows(String typed) throws Exception {
    DeskKeys keys = keys();
    press(keys, typed(typed));
    return keys.model();
  }

  /** What is said once these are typed and Enter is pressed. */
  private String entered(String typed) throws Exception {
    DeskKeys keys = keys();
    press(keys, typed(typed));
    press(keys, ENTER);
    return keys.model().message();
  }

  private static void golden(String name, DeskModel model) throws IOException {
    for (int[] size : new int[][] {{80, 24}, {140, 45}}) {
      String file = size[0] + "x" + size[1] + "-desk-" + name;
      Golden.check(file, DeskPage.draw(model, size[0], size[1]));
    }
  }

  @Test
  void looksCalm() throws Exception {
    golden("benches", BENCHES);
    golden("release", shows("2rtighten 1/8"));
    golden("stop", shows("1r"));
    DeskKeys bench = keys();
    press(bench, new Key.Typed('2'), ENTER);
    golden("bench", bench.model());
    golden("levels", shows("2l"));
    golden("spread", shows("s"));
    golden("orders", shows("o"));
    golden("end", shows("e"));
    golden("keys", shows("?"));
    golden("hold", shows("3hLook here."));
  }

  @Test
  void looksCalmWithNobodyThere() throws Exception {
    Sight sight = InventedLesson.sight(List.<WriterLog>of());
    Golden.check("80x24-desk-empty", DeskPage.draw(DeskModel.of(sight), 80, 24));
    Files.createDirectories(folder);
    Files.writeString(folder.resolve(LessonFolder.PLAN), PlanFile.text(InventedLesson.PLAN));
    Clock clock = Clock.fixed(InventedLesson.NOW, ZoneOffset.UTC);
    desk = Desk.open(folder, "desk", clock, (plan, logs) -> folder, InventedLesson.TITLES);
    for (String key : List.of("r", "h", "l")) {
      assertThat(shows(key).message()).isEqualTo("No bench has joined yet.");
    }
  }

  @Test
  void anOrderTakesTheMarkedBenchAndWhatIsTyped() throws Exception {
    assertThat(entered("2rtighten 1/8")).startsWith("Released Red: the turn");
    assertThat(entered("1r")).isEqualTo("Released Blue: the stop.");
    assertThat(entered("3hLook.")).isEqualTo("Held Green.");
    assertThat(entered("aLook.")).isEqualTo("Held every bench.");
    assertThat(shows("g").message()).startsWith("No bench is held by a desk;");
    assertThat(shows("w").message()).startsWith("The sheets are in");
  }

  @Test
  void whatIsRefusedCanBeTypedAnew() throws Exception {
    DeskKeys keys = keys();
    press(keys, typed("2rok"));
    press(keys, ENTER);
    assertThat(keys.model().message()).contains("is no value");
    assertThat(keys.model().field().text()).isEqualTo("ok");
    assertThat(press(keys, Key.Named.ESC)).isEqualTo(new Effect.None());
    assertThat(keys.model().asked()).isNull();
  }

  /** What is marked stays marked when benches change places under the teacher's fingers. */
  @Test
  void theMarkStaysOnItsBench() throws Exception {
    DeskModel green = shows("3");
    assertThat(green.marked()).isEqualTo("green");
    Sight moved =
        InventedLesson.sight(
            InventedLesson.with(
                InventedLesson.logs(),
                "green",
                new LessonEvent.Stopped(InventedLesson.NOW, "It slips.")));
    DeskModel then = green.seeing(moved, null);
    assertThat(then.marked()).isEqualTo("green");
    assertThat(moved.view().rows().indexOf(then.row())).isLessThan(2);
    // Where none was marked, keys act on the bench that stands first now.
    DeskModel first = DeskModel.of(InventedLesson.sight()).seeing(moved, null);
    assertThat(first.row()).isEqualTo(moved.view().rows().get(0));
  }

  @Test
  void whatIsTypedGoesOnWhileTheDeskLooks() throws Exception {
    DeskKeys keys = keys();
    press(keys, typed("2rtighten"));
    keys.look();
    assertThat(keys.model().field().text()).isEqualTo("tighten");
  }

  @Test
  void levelsAreSetByNumberAndKept() throws Exception {
    DeskKeys keys = keys();
    press(keys, typed("2l4"));
    assertThat(keys.model().message()).isEqualTo("Ana at Red: the student's own.");
    press(keys, Key.Named.DOWN, new Key.Typed('f'));
    assertThat(keys.model().message())
        .isEqualTo("Ben at Red: the last step is left to the student.");
    assertThat(keys.model().layer()).isEqualTo(DeskLayer.LEVEL);
  }

  @Test
  void theEndIsAskedFor() throws Exception {
    assertThat(shows("e").sight().ended()).isFalse();
    assertThat(entered("e")).isEqualTo("The lesson goes on.");
    assertThat(shows("en").message()).isEqualTo("The lesson goes on.");
    assertThat(shows("ey").message()).startsWith("The lesson is ended.");
    assertThat(shows("e").message()).contains("has been ended");
  }

  @ParameterizedTest
  @ValueSource(strings = {"?", "s", "o", "2r", "3h", "a", "2l", "e"})
  void escGoesBackAndNeverQuits(String typed) throws Exception {
    DeskKeys keys = keys();
    press(keys, typed(typed));
    assertThat(press(keys, Key.Named.ESC)).isEqualTo(new Effect.None());
    assertThat(keys.model().layer()).isEqualTo(DeskLayer.NONE);
    assertThat(keys.model().asked()).isNull();
    assertThat(press(keys, Key.Named.ESC)).isEqualTo(new Effect.None());
    assertThat(press(keys, new Key.Typed('q'))).isEqualTo(new Effect.Leave());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "?", "s", "o", "1r", "2r", "3h", "a", "2l", "e"})
  void helpIsAlwaysThere(String typed) throws Exception {
    DeskKeys keys = keys();
    press(keys, typed(typed));
    press(keys, new Key.Function(1));
    DeskModel next = keys.model();
    if (typed.equals("?")) {
      assertThat(next.layer()).isEqualTo(DeskLayer.NONE);
    } else {
      assertThat(next.layer() == DeskLayer.KEYS || !next.message().isEmpty()).isTrue();
    }
  }

  @Test
  void aLetterOfAReasonIsNoKey() throws Exception {
    DeskModel typing = shows("3hquit?");
    assertThat(typing.asked()).isNotNull();
    assertThat(typing.field().text()).isEqualTo("quit?");
  }

  /** So many benches that the question of the end is longer than the screen. */
  @Test
  void theFieldIsInViewHoweverMuchIsAsked() {
    List<String> lines = IntStream.range(0, 60).mapToObj(i -> "Line " + i).toList();
    Question asked = new Question.Words("End the lesson?", lines, "Type yes", "Help.");
    DeskModel model =
        BENCHES.seeing(BENCHES.sight(), asked).typing(Field.EMPTY.with(new Key.Typed('y')));
    String text = DeskPage.draw(model, 80, 24).text();
    assertThat(text).contains("► y");
    assertThat(text).contains("▼ more below");
    int most = DeskPage.mostScroll(model, 80, 24);
    assertThat(DeskPage.draw(model.scrolledTo(most), 80, 24).text()).contains("Type yes");
  }

  @Test
  void anySizeIsDrawn() {
    for (DeskLayer layer : DeskLayer.values()) {
      for (int width = 1; width <= 200; width += 7) {
        for (int height = 1; height <= 60; height += 3) {
          Canvas canvas = DeskPage.draw(BENCHES.with(layer), width, height);
          assertThat(canvas.width()).isEqualTo(width);
        }
      }
    }
  }

  @Test
  void whereManyAreThereTheMarkedOneIsInView() {
    Sight many = InventedLesson.sight(InventedLesson.many(30));
    DeskModel model = DeskModel.of(many);
    for (DeskView.Row row : many.view().rows()) {
      String text = DeskPage.draw(model.marking(row.bench().bench()), 80, 24).text();
      assertThat(text).contains("► " + " " + row.bench().name() + " ");
    }
  }

  @Test
  void noTextOfABenchMovesTheCursor() {
    Sight sight =
        InventedLesson.sight(
            InventedLesson.with(
                InventedLesson.logs(),
                "green",
                new LessonEvent.Came(Instant.EPOCH, "\u001b[2J"),
                new LessonEvent.Stopped(InventedLesson.NOW, "\u001b[31m\u0007")));
    for (DeskLayer layer : DeskLayer.values()) {
      DeskModel model = DeskModel.of(sight).marking("green").with(layer);
      assertThat(DeskPage.draw(model, 140, 45).text()).doesNotContain("\u001b");
    }
  }
}
