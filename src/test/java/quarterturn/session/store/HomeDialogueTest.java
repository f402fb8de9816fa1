package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;

class HomeDialogueTest {
  private static final HomeDialogue.Choice AGAIN = begin("relief", "practice-bass", Role.BEGINNER);
  private static final HomeDialogue.Choice LATER = begin("season", "practice-bass", Role.BEGINNER);
  private static final HomeDialogue.Choice OPEN = new HomeDialogue.Choice.Resume("a-1");
  private static final HomeDialogue.Choice QUIT = new HomeDialogue.Choice.Quit();
  private static final List<HomeDialogue.Item> BEGUN =
      List.of(item("practice-bass", AGAIN), item("practice-bass", LATER), item("a-1", OPEN));

  private final HomeDialogue dialogue = dialogue(BEGUN);

  private static HomeDialogue.Choice begin(
      String procedure, @Nullable String instrument, Role role) {
    return new HomeDialogue.Choice.Begin(procedure, instrument, role);
  }

  private static HomeDialogue.Item item(String name, HomeDialogue.Choice choice) {
    return new HomeDialogue.Item(new Question.Option(name, "label", "detail", "Due"), choice);
  }

  private static HomeDialogue dialogue(List<HomeDialogue.Item> begun) {
    return HomeDialogues.of(begun, List.of("practice-bass", "blue-guitar"));
  }

  private static HomeDialogue.Choice chosen(String... typed) throws Exception {
    HomeDialogue dialogue = dialogue(BEGUN);
    for (String line : typed) {
      dialogue.take(line);
    }
    assertThat(dialogue.question()).isNull();
    return dialogue.choice();
  }

  private Question.Choose question() {
    return question(dialogue);
  }

  private static Question.Choose question(HomeDialogue dialogue) {
    return (Question.Choose) Objects.requireNonNull(dialogue.question());
  }

  private static List<String> names(HomeDialogue dialogue) {
    return question(dialogue).options().stream().map(Question.Option::name).toList();
  }

  @Test
  void whatIsDueStandsFirstThenWhatCanBeBegun() throws Exception {
    assertThat(question().options().stream().map(Question.Option::name).toList())
        .containsExactly(
            "practice-bass",
            "practice-bass",
            "a-1",
            "start",
            "setup",
            "relief-check",
            "buzz",
            "stage",
            "practice-bass",
            "blue-guitar",
            "rehearse",
            "watch",
            "history",
            "discard",
            "words",
            "quit")
        .inOrder();
    assertThat(question().options().stream().map(Question.Option::group).distinct().toList())
        .containsExactly("Due", "Begin", "Your instruments", "More")
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
        Map.of(),
        proving,
        new HomeDialogues.Told());
  }

  @Test
  void proceduresOfOnesOwnStandBehindThoseOfTheProgramAndBegin() throws Exception {
    HomeDialogue home = withOwn(choice -> {});
    Question.Choose question = question(home);
    assertThat(question.options().stream().map(Question.Option::label).toList())
        .containsAtLeast(
            "Set it up",
            "New strings, restring",
            "New strings, strings-two",
            "torn",
            "Watch it dry",
            "Practise on a simulated neck")
        .inOrder();
    assertThat(question.options().get(10).detail())
        .isEqualTo("It can't be started. torn.yaml:3:1: no key.");
    assertThat(question.lines()).contains("From settings.yaml: own files in /x.");
    home.take("restring");
    assertThat(home.choice())
        .isEqualTo(new HomeDialogue.Choice.Begin("restring", null, Role.BEGINNER));
    HomeDialogue clash = withOwn(choice -> {});
    clash.take("watch");
    assertThat(clash.choice()).isEqualTo(new HomeDialogue.Choice.Rehearse(true));
    HomeDialogue numbered = withOwn(choice -> {});
    numbered.take("12");
    assertThat(numbered.choice())
        .isEqualTo(new HomeDialogue.Choice.Begin("watch", null, Role.BEGINNER));
  }

  @Test
  void aChoiceThatCannotBeHadIsRefusedAndTheOthersStay() throws Exception {
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
  void anItemIsChosenByItsNumber() throws Exception {
    assertThat(chosen("1")).isEqualTo(AGAIN);
    assertThat(chosen("2")).isEqualTo(LATER);
    assertThat(chosen("3")).isEqualTo(OPEN);
    assertThat(chosen("4")).isEqualTo(new HomeDialogue.Choice.Begin("relief", null, Role.BEGINNER));
    assertThat(chosen("5")).isEqualTo(new HomeDialogue.Choice.Begin("setup", null, Role.BEGINNER));
    assertThat(chosen("7")).isEqualTo(new HomeDialogue.Choice.Begin("buzz", null, Role.BEGINNER));
    assertThat(chosen("11")).isEqualTo(new HomeDialogue.Choice.Rehearse(false));
    assertThat(chosen("12")).isEqualTo(new HomeDialogue.Choice.Rehearse(true));
    assertThat(chosen("16")).isEqualTo(QUIT);
  }

  @Test
  void anItemIsChosenByItsNameAndTheMostPressingOneOfSeveral() throws Exception {
    assertThat(chosen("practice-bass")).isEqualTo(AGAIN);
    assertThat(chosen(" A-1 ")).isEqualTo(OPEN);
    assertThat(chosen("s")).isEqualTo(chosen("start"));
    assertThat(chosen("q")).isEqualTo(QUIT);
    assertThat(chosen("watch")).isEqualTo(new HomeDialogue.Choice.Rehearse(true));
  }

  @Test
  void theProgramsOwnWordsComeBeforeTheNamesOfWhatIsDue() throws Exception {
    HomeDialogue clash = dialogue(List.of(item("watch", AGAIN)));
    clash.take("watch");
    assertThat(clash.choice()).isEqualTo(new HomeDialogue.Choice.Rehearse(true));
  }

  @Test
  void aProcedureAndAnInstrumentBeginAtOnce() throws Exception {
    assertThat(chosen("relief-check blue-guitar technician"))
        .isEqualTo(begin("relief-check", "blue-guitar", Role.TECHNICIAN));
    assertThat(chosen("Season practice-bass")).isEqualTo(LATER);
  }

  @Test
  void anythingElseIsToldWhatIsTaken() throws Exception {
    for (String typed :
        List.of(
            "0",
            "17",
            "99999",
            "back",
            "discard b-2",
            "relief red-guitar",
            "relief blue-guitar now")) {
      NotUnderstoodException told =
          assertThrows(NotUnderstoodException.class, () -> dialogue.take(typed));
      assertThat(told)
          .hasMessageThat()
          .isEqualTo(
              "Type a number from the list, start, setup, relief-check, buzz, stage, rehearse, watch,"
                  + " history, discard, words or quit; or a procedure and one of your instruments, and"
                  + " technician for short texts.");
      assertThat(dialogue.question()).isNotNull();
    }
  }

  @Test
  void nothingChosenIsToQuit() throws Exception {
    assertThat(dialogue.choice()).isEqualTo(QUIT);
  }

  @Test
  void completionKnowsProceduresThatAreNotListed() throws Exception {
    assertThat(dialogue.words())
        .containsAtLeast("a-1", "start", "relief-check", "blue-guitar", "technician", "quit");
    assertThat(dialogue.words()).containsNoDuplicates();
  }

  @Test
  void aStageCanBeBegunAloneAndOnOneInstrument() throws Exception {
    assertThat(chosen("stage", "pickups")).isEqualTo(begin("pickups", null, Role.BEGINNER));
    assertThat(chosen("10", "4")).isEqualTo(begin("buzz", "blue-guitar", Role.BEGINNER));
    assertThat(chosen("10", "stage", "ladder"))
        .isEqualTo(begin("ladder", "blue-guitar", Role.BEGINNER));
  }

  /** The ids are those of the shipped files. */
  @Test
  void everyProcedureOfTheProgramIsReached() throws Exception {
    Set<String> reached = new TreeSet<>();
    HomeDialogue home = dialogue(List.of());
    for (String page : List.of("", "stage")) {
      if (!page.isEmpty()) {
        home.take(page);
      }
      for (int i = 1; i <= names(home).size(); i++) {
        HomeDialogue tried = dialogue(List.of());
        if (!page.isEmpty()) {
          tried.take(page);
        }
        tried.take(String.valueOf(i));
        if (tried.choice() instanceof HomeDialogue.Choice.Begin begin) {
          reached.add(begin.procedure());
        }
      }
    }
    assertThat(reached).isEqualTo(new TreeSet<>(new Shelf(null).procedures()));
  }

  @Test
  void whatWasDoneIsShownAndEscLeadsBack() throws Exception {
    dialogue.take("history");
    assertThat(names(dialogue)).containsExactly("practice-bass", "blue-guitar", "all").inOrder();
    dialogue.take("blue-guitar");
    assertThat(dialogue.question())
        .isEqualTo(new Question.Show("History of blue-guitar", List.of("History of blue-guitar")));
    dialogue.take("");
    assertThat(dialogue.back()).isTrue();
    assertThat(question().title()).isEmpty();
    assertThat(dialogue.back()).isFalse();
    dialogue.take("history");
    dialogue.take("back");
    assertThat(question().title()).isEmpty();
  }

  @Test
  void wordsAreOpenedByTheirNameAndByAQuestionMark() throws Exception {
    for (String typed : List.of("words", "?", "15")) {
      HomeDialogue home = dialogue(BEGUN);
      home.take(typed);
      assertThat(names(home)).containsExactly("words", "needs", "meanwhile").inOrder();
      assertThat(home.back()).isTrue();
      assertThat(question(home).title()).isEmpty();
    }
  }

  @Test
  void aSessionIsDiscardedAfterOneQuestionThatSaysHowTheInstrumentStands() throws Exception {
    HomeDialogues.Told past = new HomeDialogues.Told();
    HomeDialogue home =
        new HomeDialogue(
            List.of(),
            BEGUN,
            ShippedRules.ALL.results(),
            List.of(),
            List.of(),
            Map.of(),
            choice -> {},
            past);
    home.take("discard");
    assertThat(names(home)).containsExactly("a-1");
    home.take("1");
    assertThat(question(home).lines().get(0))
        .isEqualTo("The instrument stays as it is now: strings detuned, rod turned.");
    home.take("no");
    assertThat(past.discarded).isEmpty();
    home.take("back");
    home.take("discard a-1");
    home.take("yes");
    assertThat(past.discarded).containsExactly("a-1");
    assertThat(names(home)).containsNoneOf("a-1", "discard");
  }

  @Test
  void whatCannotBeDiscardedStays() throws Exception {
    HomeDialogues.Told past = new HomeDialogues.Told();
    past.discarded.add("b-2");
    HomeDialogue home =
        new HomeDialogue(
            List.of(),
            BEGUN,
            ShippedRules.ALL.results(),
            List.of(),
            List.of(),
            Map.of(),
            choice -> {},
            past);
    home.take("discard a-1");
    assertThat(assertThrows(RefusedException.class, () -> home.take("yes")))
        .hasMessageThat()
        .contains("is open in another window");
    home.take("no");
    assertThat(names(home)).contains("a-1");
  }
}
