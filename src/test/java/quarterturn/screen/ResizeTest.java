package quarterturn.screen;

import static com.google.common.truth.Truth.assertWithMessage;

import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.lesson.InventedLesson;
import quarterturn.procedure.read.Shelf;
import quarterturn.screen.page.CardView;
import quarterturn.screen.page.Page;
import quarterturn.screen.page.PageTest;
import quarterturn.screen.state.Field;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Emulated;
import quarterturn.session.Question;
import quarterturn.session.store.HomeDialogues;
import quarterturn.session.store.InstrumentDialogue;

/**
 * After any change of the window's size a screen is painted from nothing: what a terminal then
 * shows is, cell by cell, what a new one shows after its first painting.
 */
@Isolated("what takes over a terminal handles what nobody caught")
class ResizeTest {
  private static final int RESIZES = 200;
  private static final long SEED = 20270412;
  private static final Set<String> PAGES =
      Set.of("tell", "choose", "measure", "turn-loosen", "wait", "done", "layer-keys");

  /** Every screen, by its name. */
  private static Map<String, BiFunction<Integer, Integer, Canvas>> screens() throws Exception {
    Map<String, BiFunction<Integer, Integer, Canvas>> all = new LinkedHashMap<>();
    Question home = HomeDialogues.of(List.of(), List.of("my-bass", "blue")).question();
    all.put("home", new QuestionView(Objects.requireNonNull(home))::draw);
    Question form =
        new InstrumentDialogue("demo", Map.of(), new Shelf(null).rules().kinds()).question();
    all.put("form", new QuestionView(Objects.requireNonNull(form))::draw);
    Question card =
        new Question.Words("Before the turn", List.of("Think first."), "Which way?", "Type it.");
    all.put(
        "card",
        (width, height) ->
            CardView.draw(
                card,
                Field.of("tighten"),
                0,
                "",
                Invented.overview(1, List.of(), 0),
                width,
                height));
    DeskModel desk = DeskModel.of(InventedLesson.sight());
    all.put("desk", (width, height) -> DeskPage.draw(desk, width, height));
    for (PageTest.View view : PageTest.views()) {
      if (PAGES.contains(view.name())) {
        all.put(
            view.name(), (width, height) -> Page.draw(view.model(), ZoneOffset.UTC, width, height));
      }
    }
    return all;
  }

  @Test
  void everyScreenIsPaintedFromNothing() throws Exception {
    Map<String, BiFunction<Integer, Integer, Canvas>> screens = screens();
    assertWithMessage("screens").that(screens.size()).isEqualTo(PAGES.size() + 4);
    try (Emulated window = new Emulated(80, 24)) {
      for (String name : screens.keySet()) {
        BiFunction<Integer, Integer, Canvas> screen = Objects.requireNonNull(screens.get(name));
        Random random = new Random(SEED);
        window.paint(screen.apply(window.width(), window.height()));
        for (int i = 0; i < RESIZES; i++) {
          window.resize(40 + random.nextInt(101), 10 + random.nextInt(36));
          if (random.nextInt(8) == 0) {
            // What was on its way to this window as the next size came.
            Canvas late = screen.apply(window.width(), window.height());
            window.resize(40 + random.nextInt(101), 10 + random.nextInt(36));
            window.paintLate(late);
            window.resize(40 + random.nextInt(101), 10 + random.nextInt(36));
          }
          Canvas now = screen.apply(window.width(), window.height());
          window.paint(now);
          long[] shown = window.cells();
          long[] fresh = window.fresh(now);
          String where = name + " at " + now.width() + "x" + now.height() + ", resize " + i;
          if (!Arrays.equals(shown, fresh)) {
            assertWithMessage(where)
                .that(Emulated.text(shown, now.width()))
                .isEqualTo(Emulated.text(fresh, now.width()));
            assertWithMessage(where + ", inks").that(shown).isEqualTo(fresh);
          }
        }
      }
    }
  }
}
