package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.WriterLog;
import quarterturn.lesson.teacher.BoardView;
import quarterturn.lesson.teacher.Sight;
import quarterturn.report.Dates;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Key;

/** The board's pages and keys. */
class BoardPageTest {
  private static final Dates DATES = new Dates(ZoneOffset.UTC);
  private static final BoardModel BENCHES = BoardModel.of(InventedLesson.sight());
  private static final Key ENTER = Key.Named.ENTER;

  private static BoardKeys.Next after(BoardModel model, Key... keys) {
    BoardKeys.Next next = new BoardKeys.Next(model, new BoardAct.None());
    for (Key key : keys) {
      next = BoardKeys.key(next.model(), key);
    }
    return next;
  }

  private static Key[] typed(String keys) {
    return keys.codePoints().mapToObj(Key.Typed::new).toArray(Key[]::new);
  }

  private static BoardModel shows(BoardModel model, String keys) {
    return after(model, typed(keys)).model();
  }

  private static void golden(String name, BoardModel model) throws IOException {
    for (int[] size : new int[][] {{80, 24}, {140, 45}}) {
      String file = size[0] + "x" + size[1] + "-board-" + name;
      Golden.check(file, BoardPage.draw(model, DATES, size[0], size[1]));
    }
  }

  @Test
  void looksCalm() throws IOException {
    golden("benches", BENCHES);
    golden("release", shows(BENCHES, "2rtighten 1/8"));
    golden("stop", shows(BENCHES, "1r"));
    golden("bench", after(BENCHES, new Key.Typed('2'), ENTER).model());
    golden("levels", shows(BENCHES, "2l"));
    golden("spread", shows(BENCHES, "s"));
    golden("orders", shows(BENCHES, "o"));
    golden("end", shows(BENCHES, "e"));
    golden("keys", shows(BENCHES, "?"));
    golden("hold", shows(BENCHES, "3hLook here."));
  }

  @Test
  void looksCalmWithNobodyThere() throws IOException {
    Sight sight = InventedLesson.sight(List.<WriterLog>of());
    Golden.check("80x24-board-empty", BoardPage.draw(BoardModel.of(sight), DATES, 80, 24));
    BoardModel model = BoardModel.of(sight);
    for (String key : List.of("r", "h", "l")) {
      assertThat(shows(model, key).message()).isEqualTo("No bench has joined yet.");
    }
  }

  @Test
  void aReleaseTakesTheMarkedBenchAndWhatIsTyped() {
    assertThat(after(shows(BENCHES, "2rtighten 1/8"), ENTER).act())
        .isEqualTo(new BoardAct.Release("red", "tighten 1/8"));
    assertThat(after(shows(BENCHES, "1r"), ENTER).act())
        .isEqualTo(new BoardAct.Release("blue", ""));
    assertThat(after(shows(BENCHES, "3hLook."), ENTER).act())
        .isEqualTo(new BoardAct.Hold("green", "Look."));
    assertThat(after(shows(BENCHES, "aLook."), ENTER).act())
        .isEqualTo(new BoardAct.Hold(null, "Look."));
  }

  /** What is marked stays marked when benches change places under the teacher's fingers. */
  @Test
  void theMarkStaysOnItsBench() {
    BoardModel green = shows(BENCHES, "3");
    assertThat(green.marked()).isEqualTo("green");
    Sight moved =
        InventedLesson.sight(
            InventedLesson.with(
                InventedLesson.logs(),
                "green",
                new LessonEvent.Stopped(InventedLesson.NOW, "It slips.")));
    BoardModel then = green.seeing(moved);
    assertThat(then.marked()).isEqualTo("green");
    assertThat(moved.view().rows().indexOf(then.row())).isLessThan(2);
  }

  /** Enter was meant for the hold that was shown, so it must not clear the stop. */
  @Test
  void aReleaseIsLeftWhereAStopComesFirst() {
    BoardModel asked = shows(BENCHES, "2rtighten 1/8");
    assertThat(asked.seeing(InventedLesson.sight()).field()).isEqualTo(asked.field());
    Sight stopped =
        InventedLesson.sight(
            InventedLesson.with(
                InventedLesson.logs(),
                "red",
                new LessonEvent.Stopped(InventedLesson.NOW, "It slips.")));
    BoardModel then = asked.seeing(stopped);
    assertThat(then.layer()).isEqualTo(BoardLayer.NONE);
    assertThat(after(then, ENTER).act()).isEqualTo(new BoardAct.None());
  }

  @Test
  void levelsAreSetByNumberAndKept() {
    BoardModel levels = shows(BENCHES, "2l");
    assertThat(after(levels, new Key.Typed('4')).act())
        .isEqualTo(new BoardAct.SetLevel("red", "Ana", Level.OWN, null));
    BoardModel ben = after(levels, Key.Named.DOWN).model();
    assertThat(after(ben, new Key.Typed('f')).act())
        .isEqualTo(new BoardAct.SetLevel("red", "Ben", null, false));
  }

  @Test
  void theEndIsAskedFor() {
    assertThat(after(BENCHES, new Key.Typed('e')).act()).isEqualTo(new BoardAct.None());
    assertThat(shows(BENCHES, "en").layer()).isEqualTo(BoardLayer.NONE);
    assertThat(after(shows(BENCHES, "e"), ENTER).act()).isEqualTo(new BoardAct.None());
    assertThat(after(shows(BENCHES, "e"), new Key.Typed('y')).act()).isEqualTo(new BoardAct.End());
    Sight ended =
        InventedLesson.sight(
            InventedLesson.with(
                InventedLesson.logs(),
                "board",
                new LessonEvent.Ordered(InventedLesson.NOW, null, new Order.End())));
    assertThat(shows(BoardModel.of(ended), "e").message()).contains("has been ended");
  }

  @ParameterizedTest
  @EnumSource(BoardLayer.class)
  void escGoesBackAndNeverQuits(BoardLayer layer) {
    BoardKeys.Next next = after(BENCHES.with(layer), Key.Named.ESC);
    assertThat(next.act()).isEqualTo(new BoardAct.None());
    assertThat(next.model().layer()).isEqualTo(BoardLayer.NONE);
    assertThat(after(next.model(), Key.Named.ESC).act()).isEqualTo(new BoardAct.None());
  }

  @ParameterizedTest
  @EnumSource(BoardLayer.class)
  void helpIsAlwaysThere(BoardLayer layer) {
    BoardModel next = after(BENCHES.with(layer), new Key.Function(1)).model();
    if (layer == BoardLayer.KEYS) {
      assertThat(next.layer()).isEqualTo(BoardLayer.NONE);
    } else {
      assertThat(next.layer() == BoardLayer.KEYS || !next.message().isEmpty()).isTrue();
    }
  }

  @Test
  void aLetterOfAReasonIsNoKey() {
    BoardModel typing = shows(BENCHES, "3hquit?");
    assertThat(typing.layer()).isEqualTo(BoardLayer.HOLD);
    assertThat(typing.field().text()).isEqualTo("quit?");
  }

  @Test
  void anySizeIsDrawn() {
    for (BoardLayer layer : BoardLayer.values()) {
      for (int width = 1; width <= 200; width += 7) {
        for (int height = 1; height <= 60; height += 3) {
          Canvas canvas = BoardPage.draw(BENCHES.with(layer), DATES, width, height);
          assertThat(canvas.width()).isEqualTo(width);
        }
      }
    }
  }

  @Test
  void whereManyAreThereTheMarkedOneIsInView() {
    Sight many = InventedLesson.sight(InventedLesson.many(30));
    BoardModel model = BoardModel.of(many);
    for (BoardView.Row row : many.view().rows()) {
      String text = BoardPage.draw(model.marking(row.bench().bench()), DATES, 80, 24).text();
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
    for (BoardLayer layer : BoardLayer.values()) {
      BoardModel model = BoardModel.of(sight).marking("green").with(layer);
      assertThat(BoardPage.draw(model, DATES, 140, 45).text()).doesNotContain("\u001b");
    }
  }
}
