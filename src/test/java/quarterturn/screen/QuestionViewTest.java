package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Question;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.HomeDialogues;
import quarterturn.session.store.OwnProcedure;

class QuestionViewTest {
  private static final List<Question.Option> UNFINISHED =
      List.of(
          option("Neck relief on practice-bass: settled, ready", "Begun 12:00. Settled, ready"),
          option("Neck relief on bass-34", "Begun 2027-03-02 06:00. Strings at pitch"));
  private static final List<Question.Option> DUE =
      List.of(
          new Question.Option(
              "blue-guitar",
              "blue-guitar",
              "A day after the rod was turned, read the relief again. Due 2 hours ago (10:05)",
              "Due"),
          new Question.Option(
              "b-2",
              "Neck relief on red-guitar, 14 minutes left",
              "Begun 12:00. It waits until 12:14",
              "Waiting"));
  private static final QuestionView HOME = view(UNFINISHED);
  private static final QuestionView ALL =
      view(Stream.concat(DUE.stream(), UNFINISHED.stream()).toList());

  private static Question.Option option(String label, String detail) {
    return new Question.Option("a-1", label, detail, "To go on with");
  }

  private static QuestionView view(List<Question.Option> begun) {
    HomeDialogue.Choice resume = new HomeDialogue.Choice.Resume("a-1");
    List<HomeDialogue.Item> items =
        begun.stream().map(option -> new HomeDialogue.Item(option, resume)).toList();
    HomeDialogue dialogue = HomeDialogues.of(items, List.of());
    return new QuestionView(Objects.requireNonNull(dialogue.question()));
  }

  /** What these keys answer, or null. */
  private static @Nullable String after(QuestionView view, Key... keys) {
    QuestionView now = view;
    for (Key key : keys) {
      String answer = now.answer(key);
      if (answer != null) {
        return answer;
      }
      now = now.key(key);
    }
    return null;
  }

  @Test
  void looksCalm() throws IOException {
    Golden.check("80x24-home", HOME.draw(80, 24));
    Golden.check("140x45-home", HOME.draw(140, 45));
    Golden.check("80x24-home-due", ALL.draw(80, 24));
    Golden.check("140x45-home-due", ALL.draw(140, 45));
    Golden.check("80x24-home-empty", view(List.of()).draw(80, 24));
    Golden.check("60x18-home-due", ALL.draw(60, 18));
    QuestionView last = ALL.key(new Key.Typed('1')).key(new Key.Typed('5')).settled(60, 18);
    Golden.check("60x18-home-last", last.draw(60, 18));
  }

  /** At 60x18 the list scrolls to the marked line, and what is refused is said in whole. */
  @Test
  void proceduresOfOnesOwnAreListedAndWhatIsSaidIsNeverCut() {
    List<OwnProcedure> own = List.of(new OwnProcedure("restring", "New strings", ""));
    String said = "From settings.yaml: own files in /a/long/path/to/the/bench.";
    HomeDialogue home = HomeDialogues.of(List.of(said), List.of(), own, List.of());
    QuestionView view = new QuestionView(Objects.requireNonNull(home.question()));
    String text = view.key(new Key.Typed('6')).draw(60, 18).text();
    assertThat(text).contains("► 6  New strings");
    QuestionView end = view;
    for (int i = 0; i < 9; i++) {
      end = end.key(Key.Named.PAGE_DOWN).settled(60, 18);
    }
    assertThat(end.draw(60, 18).text().replaceAll("\\s+", " ")).contains(said);
    String fault = "a fault that is too long for one row of a window that has sixty columns only";
    assertThat(view.saying(fault).draw(60, 18).text().replaceAll("\\s+", " ")).contains(fault);
  }

  @Test
  void choosesByNumberAndByArrows() {
    assertThat(after(HOME, Key.Named.ENTER)).isEqualTo("1");
    assertThat(after(HOME, Key.Named.DOWN, Key.Named.ENTER)).isEqualTo("2");
    assertThat(after(HOME, new Key.Typed('3'), Key.Named.ENTER)).isEqualTo("3");
  }

  @Test
  void theNumbersGoOnOverTheGroupsAndThereIsNoneBeyondTheLast() {
    assertThat(after(ALL, new Key.Typed('5'), Key.Named.ENTER)).isEqualTo("5");
    assertThat(after(ALL, new Key.Typed('9'), Key.Named.ENTER)).isEqualTo("9");
    assertThat(after(HOME, new Key.Typed('3'), new Key.Typed('0'), Key.Named.ENTER)).isEqualTo("3");
    assertThat(after(HOME, new Key.Typed('9'), new Key.Typed('9'), Key.Named.ENTER)).isEqualTo("9");
    assertThat(after(HOME, new Key.Typed('1'), new Key.Typed('2'), Key.Named.ENTER))
        .isEqualTo("12");
    assertThat(after(HOME, new Key.Typed('1'), Key.Named.DOWN, new Key.Typed('2'), Key.Named.ENTER))
        .isEqualTo("2");
  }

  @Test
  void whereNothingIsDueThereIsNoHeadingForIt() {
    assertThat(HOME.draw(80, 24).text()).doesNotContain("Due");
    assertThat(ALL.draw(80, 24).text()).contains("Due");
  }

  @Test
  void onlyQAndF10Close() {
    assertThat(after(HOME, Key.Named.ESC, Key.Named.ESC)).isNull();
    assertThat(HOME.leaves(Key.Named.ESC)).isFalse();
    assertThat(HOME.leaves(new Key.Typed('q'))).isTrue();
    assertThat(HOME.leaves(new Key.Function(10))).isTrue();
  }

  @Test
  void theMarkedLineIsAlwaysInView() {
    QuestionView top = view(Collections.nCopies(30, option("x", "y")));
    QuestionView view = top;
    for (int i = 0; i < 41; i++) {
      view = view.key(Key.Named.DOWN);
    }
    assertThat(top.draw(80, 24).text()).doesNotContain("►41  Quit");
    assertThat(view.draw(80, 24).text()).contains("►41  Quit");
  }

  @Test
  void controlCharactersAreNotDrawn() {
    QuestionView view = view(List.of(option("a\u001b[2Jb\u009b", "c\u0007")));
    assertThat(view.draw(80, 24).text())
        .doesNotContainMatch("[\u0000-\u0009\u000b-\u001f\u0080-\u009f]");
  }

  @Test
  void wordsAreTypedInAField() {
    Question.Words words =
        new Question.Words("A new instrument", List.of("It is kept."), "Its name?", "Any name.");
    QuestionView view = new QuestionView(words);
    assertThat(view.leaves(new Key.Typed('q'))).isFalse();
    for (char letter : "quick?".toCharArray()) {
      view = view.key(new Key.Typed(letter));
    }
    assertThat(view.answer(Key.Named.ENTER)).isEqualTo("quick?");
    assertThat(view.draw(60, 18).text()).contains("[ quick?");
    assertThat(view.saying("taken").draw(60, 18).text()).contains("! taken");
  }
}
