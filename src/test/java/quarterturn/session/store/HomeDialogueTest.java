package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

class HomeDialogueTest {
  private static final HomeDialogue.Choice AGAIN = begin("relief", "practice-bass", Role.BEGINNER);
  private static final HomeDialogue.Choice LATER = begin("season", "practice-bass", Role.BEGINNER);
  private static final HomeDialogue.Choice OPEN = new HomeDialogue.Choice.Resume("a-1");
  private static final HomeDialogue.Choice QUIT = new HomeDialogue.Choice.Quit();
  private static final List<HomeDialogue.Item> BEGUN =
      List.of(item("practice-bass", AGAIN), item("practice-bass", LATER), item("a-1", OPEN));

  private final HomeDialogue dialogue = dialogue(BEGUN);

  private static HomeDialogue.Choice begin(String procedure, String instrument, Role role) {
    return new HomeDialogue.Choice.Begin(procedure, instrument, role);
  }

  private static HomeDialogue.Item item(String name, HomeDialogue.Choice choice) {
    return new HomeDialogue.Item(new Question.Option(name, "label", "detail", "Due"), choice);
  }

  private static HomeDialogue dialogue(List<HomeDialogue.Item> begun) {
    return HomeDialogues.of(begun, List.of("practice-bass", "blue-guitar"));
  }

  private static HomeDialogue.Choice chosen(String typed) {
    HomeDialogue dialogue = dialogue(BEGUN);
    dialogue.take(typed);
    assertThat(dialogue.question()).isNull();
    return dialogue.choice();
  }

  private Question.Choose question() {
    return Objects.requireNonNull(dialogue.question());
  }

  @Test
  void whatIsDueStandsFirstThenWhatCanBeBegun() {
    assertThat(question().options().stream().map(Question.Option::name).toList())
        .containsExactly(
            "practice-bass", "practice-bass", "a-1", "start", "setup", "rehearse", "watch", "quit")
        .inOrder();
    assertThat(question().options().stream().map(Question.Option::group).distinct().toList())
        .containsExactly("Due", "Begin")
        .inOrder();
    assertThat(question().listed()).isTrue();
  }

  private static HomeDialogue withOwn(Consumer<HomeDialogue.Choice> proving) {
    List<OwnProcedure> own =
        List.of(
            new OwnProcedure("restring", "New strings", ""),
            new OwnProcedure("strings-two", "New strings", ""),
            new OwnProcedure("torn", "torn", "torn.yaml:3:1: no key."),
            new OwnProcedure("watch", "Watch it dry", ""));
    return new HomeDialogue(
        List.of("From settings.yaml: own files in /x."),
        BEGUN,
        ShippedRules.ALL.results(),
        own,
        List.of(),
        proving);
  }

  @Test
  void proceduresOfOnesOwnStandBehindThoseOfTheProgramAndBegin() {
    HomeDialogue home = withOwn(choice -> {});
    Question.Choose question = Objects.requireNonNull(home.question());
    assertThat(question.options().stream().map(Question.Option::label).toList())
        .containsAtLeast(
            "Start a whole set-up",
            "New strings, restring",
            "New strings, strings-two",
            "torn",
            "Watch it dry",
            "Rehearse on a simulated neck")
        .inOrder();
    assertThat(question.options().get(7).detail())
        .isEqualTo("It can't be started. torn.yaml:3:1: no key.");
    assertThat(question.lines()).contains("From settings.yaml: own files in /x.");
    home.take("restring");
    assertThat(home.choice())
        .isEqualTo(new HomeDialogue.Choice.Begin("restring", null, Role.BEGINNER));
    HomeDialogue clash = withOwn(choice -> {});
    clash.take("watch");
    assertThat(clash.choice()).isEqualTo(new HomeDialogue.Choice.Rehearse(true));
    HomeDialogue numbered = withOwn(choice -> {});
    numbered.take("9");
    assertThat(numbered.choice())
        .isEqualTo(new HomeDialogue.Choice.Begin("watch", null, Role.BEGINNER));
  }

  @Test
  void aChoiceThatCannotBeHadIsRefusedAndTheOthersStay() {
    HomeDialogue home =
        withOwn(
            choice -> {
              throw new NotUnderstoodException("no key");
            });
    assertThat(assertThrows(NotUnderstoodException.class, () -> home.take("torn")))
        .hasMessageThat()
        .isEqualTo("no key");
    assertThat(home.question()).isNotNull();
    assertThat(home.choice()).isEqualTo(QUIT);
  }

  @Test
  void anItemIsChosenByItsNumber() {
    assertThat(chosen("1")).isEqualTo(AGAIN);
    assertThat(chosen("2")).isEqualTo(LATER);
    assertThat(chosen("3")).isEqualTo(OPEN);
    assertThat(chosen("4")).isEqualTo(new HomeDialogue.Choice.Begin("relief", null, Role.BEGINNER));
    assertThat(chosen("5")).isEqualTo(new HomeDialogue.Choice.Begin("setup", null, Role.BEGINNER));
    assertThat(chosen("6")).isEqualTo(new HomeDialogue.Choice.Rehearse(false));
    assertThat(chosen("7")).isEqualTo(new HomeDialogue.Choice.Rehearse(true));
    assertThat(chosen("8")).isEqualTo(QUIT);
  }

  @Test
  void anItemIsChosenByItsNameAndTheMostPressingOneOfSeveral() {
    assertThat(chosen("practice-bass")).isEqualTo(AGAIN);
    assertThat(chosen(" A-1 ")).isEqualTo(OPEN);
    assertThat(chosen("s")).isEqualTo(chosen("start"));
    assertThat(chosen("q")).isEqualTo(QUIT);
    assertThat(chosen("watch")).isEqualTo(new HomeDialogue.Choice.Rehearse(true));
  }

  @Test
  void theProgramsOwnWordsComeBeforeTheNamesOfWhatIsDue() {
    HomeDialogue clash = dialogue(List.of(item("watch", AGAIN)));
    clash.take("watch");
    assertThat(clash.choice()).isEqualTo(new HomeDialogue.Choice.Rehearse(true));
  }

  @Test
  void aProcedureAndAnInstrumentBeginAtOnce() {
    assertThat(chosen("relief-check blue-guitar technician"))
        .isEqualTo(begin("relief-check", "blue-guitar", Role.TECHNICIAN));
    assertThat(chosen("Season practice-bass")).isEqualTo(LATER);
  }

  @Test
  void anythingElseIsToldWhatIsTaken() {
    for (String typed :
        List.of("", "0", "9", "99999", "relief red-guitar", "relief blue-guitar now")) {
      NotUnderstoodException told =
          assertThrows(NotUnderstoodException.class, () -> dialogue.take(typed));
      assertThat(told)
          .hasMessageThat()
          .isEqualTo(
              "Type a number from the list, start, setup, rehearse, watch or quit; or a procedure"
                  + " and one of your instruments, and technician for short texts.");
      assertThat(dialogue.question()).isNotNull();
    }
  }

  @Test
  void nothingChosenIsToQuit() {
    assertThat(dialogue.choice()).isEqualTo(QUIT);
  }

  @Test
  void completionKnowsProceduresThatAreNotListed() {
    assertThat(dialogue.words())
        .containsAtLeast("a-1", "start", "relief-check", "blue-guitar", "technician", "quit");
    assertThat(dialogue.words()).containsNoDuplicates();
  }
}
