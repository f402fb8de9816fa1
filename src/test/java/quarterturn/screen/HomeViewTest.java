package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.screen.terminal.Key;

class HomeViewTest {
  private static final HomeView HOME =
      HomeView.of(
          List.of(),
          List.of(
              new HomeItem(
                  "Practice bass (invented)",
                  "Neck relief, settle and read",
                  "Settled since 12:10; a reading is due."),
              new HomeItem(
                  "Blue guitar (invented)", "Neck relief, turn", "The rod rests until tomorrow.")),
          List.of(
              new HomeItem(
                  "Neck relief",
                  "Bring the curve of the neck into its window, turn by turn.",
                  "")));

  private static final HomeView DUE =
      HomeView.of(
          List.of(
              new HomeItem(
                  "practice-bass",
                  "A day after the rod was turned, read the relief again.",
                  "Due 2 hours ago (10:05)"),
              new HomeItem(
                  "relief on blue-guitar, begun 12:00",
                  "2027-03-01-relief-k3f9",
                  "Waiting, 14 minutes to go")),
          HOME.unfinished(),
          HOME.starts());

  /** What is chosen by these keys, or null. */
  private static @Nullable HomeChoice after(HomeView view, Key... keys) {
    HomeView.Step step = new HomeView.Step(view, null);
    for (Key key : keys) {
      step = step.choice() == null ? step.view().key(key) : step;
    }
    return step.choice();
  }

  @Test
  void looksCalm() throws IOException {
    Golden.check("80x24-home", HOME.draw(80, 24));
    Golden.check("140x45-home", HOME.draw(140, 45));
    Golden.check("80x24-home-due", DUE.draw(80, 24));
    Golden.check("140x45-home-due", DUE.draw(140, 45));
    Golden.check("80x24-home-empty", HomeView.of(List.of(), List.of(), HOME.starts()).draw(80, 24));
  }

  @Test
  void choosesByNumberAndByArrows() {
    assertThat(after(HOME, Key.Named.ENTER)).isEqualTo(new HomeChoice.Resume(0));
    assertThat(after(HOME, Key.Named.DOWN, Key.Named.ENTER)).isEqualTo(new HomeChoice.Resume(1));
    assertThat(after(HOME, new Key.Typed('3'), Key.Named.ENTER)).isEqualTo(new HomeChoice.Start(0));
  }

  @Test
  void whatIsDueStandsFirstAndTheNumbersGoOn() {
    assertThat(after(DUE, Key.Named.ENTER)).isEqualTo(new HomeChoice.Due(0));
    assertThat(after(DUE, new Key.Typed('2'), Key.Named.ENTER)).isEqualTo(new HomeChoice.Due(1));
    assertThat(after(DUE, new Key.Typed('3'), Key.Named.ENTER)).isEqualTo(new HomeChoice.Resume(0));
    assertThat(after(DUE, new Key.Typed('5'), Key.Named.ENTER)).isEqualTo(new HomeChoice.Start(0));
    assertThat(after(DUE, new Key.Typed('3'), new Key.Typed('6'), Key.Named.ENTER))
        .isEqualTo(new HomeChoice.Resume(0));
  }

  @Test
  void whereNothingIsDueThereIsNoHeadingForIt() {
    assertThat(HOME.draw(80, 24).text()).doesNotContain("Due");
    assertThat(DUE.draw(80, 24).text()).contains("Due");
  }

  @Test
  void onlyQCloses() {
    assertThat(after(HOME, Key.Named.ESC, Key.Named.ESC)).isNull();
    assertThat(after(HOME, new Key.Typed('q'))).isEqualTo(new HomeChoice.Quit());
  }

  @Test
  void theMarkedLineIsAlwaysInView() {
    List<HomeItem> many = new ArrayList<>(Collections.nCopies(30, new HomeItem("x", "y", "z")));
    many.add(new HomeItem("the last one", "", ""));
    HomeView view = new HomeView(List.of(), many, List.of(), 30, "");
    assertThat(view.draw(80, 24).text()).contains("the last one");
  }

  @Test
  void controlCharactersAreNotDrawn() {
    HomeView view =
        HomeView.of(
            List.of(new HomeItem("a\u001b[2Jb", "c\u0007", "d\u009b")), List.of(), List.of());
    assertThat(view.draw(80, 24).text())
        .doesNotContainMatch("[\u0000-\u0009\u000b-\u001f\u0080-\u009f]");
  }
}
