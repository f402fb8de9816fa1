package quarterturn.screen.state;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.screen.Invented;
import quarterturn.screen.page.Page;
import quarterturn.screen.page.PageTest;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.Turn;

class UpdateTest {
  private static Model model(Prompt prompt) {
    return PageTest.model(prompt, 2, 2);
  }

  /** The effects of some keys: a name from {@link Key.Named}, or characters to type. */
  private static List<Effect> effects(Model from, String... keys) {
    List<Effect> out = new ArrayList<>();
    run(from, out, keys);
    return out;
  }

  private static Model after(Model from, String... keys) {
    return run(from, new ArrayList<>(), keys);
  }

  private static Model run(Model from, List<Effect> effects, String... keys) {
    Model model = from;
    for (String word : keys) {
      for (Key key : parsed(word)) {
        Next next = Update.key(model, key);
        model = next.model();
        if (!(next.effect() instanceof Effect.None)) {
          effects.add(next.effect());
        }
      }
    }
    return model;
  }

  private static List<Key> parsed(String word) {
    if (word.matches("F\\d+")) {
      return List.of(new Key.Function(Integer.parseInt(word.substring(1))));
    }
    for (Key.Named named : Key.Named.values()) {
      if (named.name().equals(word)) {
        return List.of(named);
      }
    }
    return word.codePoints().<Key>mapToObj(Key.Typed::new).toList();
  }

  private static Effect send(Answer answer) {
    return new Effect.Send(answer);
  }

  @Test
  void nothingButUAcceptsAHazard() {
    Model caution = model(Invented.CAUTION);
    for (Key.Named key : Key.Named.values()) {
      assertThat(Update.key(caution, key).effect()).isEqualTo(new Effect.None());
    }
    for (int c = ' '; c < 0x7f; c++) {
      if (c != 'u' && c != 'U' && c != 'b' && c != 'B') {
        assertThat(Update.key(caution, new Key.Typed(c)).effect()).isEqualTo(new Effect.None());
      }
    }
    assertThat(effects(caution, "u")).containsExactly(send(new Answer.Confirmed()));
  }

  @Test
  void enterOnAHazardSaysWhatToDo() {
    assertThat(after(model(Invented.CAUTION), "ENTER").message()).contains("press u");
  }

  @Test
  void enterDoesATell() {
    assertThat(effects(model(Invented.TELL), "ENTER"))
        .containsExactly(send(new Answer.Confirmed()));
  }

  /** What stands below the view is read before it is confirmed. */
  @Test
  void whatGoesOnBelowIsScrolledToBeforeItIsConfirmed() {
    for (Prompt prompt : List.of(Invented.CAUTION, Invented.TELL)) {
      String key = prompt instanceof Prompt.Caution ? "u" : "ENTER";
      Model more = model(prompt).scrolledTo(0, 6, true);
      assertThat(effects(more, key)).isEmpty();
      assertThat(after(more, key).scroll()).isGreaterThan(0);
      assertThat(after(more, key).message()).contains("more to read");
      assertThat(effects(more.scrolledTo(5, 6, false), key))
          .containsExactly(send(new Answer.Confirmed()));
    }
  }

  @Test
  void whatWasReadStaysReadThroughALook() {
    for (int[] size : List.of(new int[] {60, 18}, new int[] {80, 24})) {
      Prompt caution = Invented.CAUTION.noting(List.of("A note. ".repeat(200)));
      Model read = Page.settled(model(caution).scrolled(500), ZoneOffset.UTC, size[0], size[1]);
      assertThat(read.scroll()).isGreaterThan(0);
      for (String key : List.of("?", "w", "l", "o", "q")) {
        Model looked = Page.settled(after(read, key), ZoneOffset.UTC, size[0], size[1]);
        Model back = Page.settled(after(looked, "ESC"), ZoneOffset.UTC, size[0], size[1]);
        assertThat(back.scroll()).isEqualTo(read.scroll());
        assertThat(effects(back, "u")).containsExactly(send(new Answer.Confirmed()));
      }
    }
  }

  @Test
  void escNeverLeavesNorAnswers() {
    for (PageTest.View view : PageTest.views()) {
      Model model = view.model();
      for (int i = 0; i < 8; i++) {
        Next next = Update.key(model, Key.Named.ESC);
        assertThat(next.effect()).isEqualTo(new Effect.None());
        model = next.model();
      }
      assertThat(model.layer()).isEqualTo(Layer.NONE);
      assertThat(model.message()).isNotEmpty();
    }
  }

  @Test
  void leavingAsksOnce() {
    Model asked = after(model(Invented.TELL), "q");
    assertThat(asked.layer()).isEqualTo(Layer.LEAVE);
    assertThat(effects(asked, "q", "ENTER", " ")).isEmpty();
    assertThat(effects(asked, "y")).containsExactly(new Effect.Leave());
    assertThat(after(asked, "n").layer()).isEqualTo(Layer.NONE);
    assertThat(after(asked, "ESC").layer()).isEqualTo(Layer.NONE);
  }

  @Test
  void lettersTypeInAFieldAndFunctionKeysStillWork() {
    Model typed = after(model(Invented.MEASURE), "qwlb?");
    assertThat(typed.layer()).isEqualTo(Layer.NONE);
    assertThat(typed.draft().toString()).contains("qwlb?");
    assertThat(after(typed, "F1").layer()).isEqualTo(Layer.KEYS);
    assertThat(after(model(Invented.MEASURE), "?").layer()).isEqualTo(Layer.KEYS);
    assertThat(after(model(Invented.LOOSEN), "ENTER", "?").layer()).isEqualTo(Layer.KEYS);
    assertThat(after(typed, "F2").layer()).isEqualTo(Layer.WHY);
    assertThat(after(typed, "F3").layer()).isEqualTo(Layer.LOG);
    assertThat(after(typed, "F10").layer()).isEqualTo(Layer.LEAVE);
    assertThat(effects(typed, "F4")).containsExactly(send(new Answer.Correct()));
    assertThat(after(typed, "ESC", "q").layer()).isEqualTo(Layer.LEAVE);
  }

  @Test
  void whatWasTypedSurvivesALook() {
    Model typed = after(model(Invented.MEASURE), "0.30 pa", "F2", "ESC", "ESC", "l", "ESC");
    assertThat(effects(typed, "ENTER", "sses", "ENTER"))
        .containsExactly(send(new Answer.Measured(Bracket.passes(0.30))));
  }

  @Test
  void theKeysScrollAndAnyOtherKeyClosesThem() {
    Model keys = after(model(Invented.TELL), "?").scrolledTo(0, 10, true);
    assertThat(keys.layer()).isEqualTo(Layer.KEYS);
    for (String key : List.of("DOWN", "UP", "PAGE_DOWN", "PAGE_UP")) {
      assertThat(after(keys, key).layer()).isEqualTo(Layer.KEYS);
      assertThat(effects(keys, key)).isEmpty();
    }
    assertThat(after(keys, "DOWN").scroll()).isEqualTo(1);
    assertThat(after(keys, "PAGE_DOWN", "UP").scroll()).isEqualTo(8);
    for (String key : List.of("ENTER", "ESC", "q", "u", "LEFT")) {
      assertThat(after(keys, key).layer()).isEqualTo(Layer.NONE);
      assertThat(effects(keys, key)).isEmpty();
    }
  }

  @Test
  void aChoiceIsMarkedBeforeItIsAccepted() {
    Model choose = model(Invented.CHOOSE);
    assertThat(effects(choose, "ENTER", "ENTER", " ")).isEmpty();
    assertThat(effects(choose, "5", "ENTER")).containsExactly(send(new Answer.Chose("sound-hole")));
    assertThat(effects(choose, "DOWN", "DOWN", "UP", "ENTER"))
        .containsExactly(send(new Answer.Chose("headstock")));
    assertThat(effects(choose, "UP", "ENTER")).containsExactly(send(new Answer.Chose("unsure")));
    assertThat(effects(choose, "9", "ENTER")).isEmpty();
  }

  @Test
  void readingsAreTypedAsTheyAreSaid() {
    Model measure = model(Invented.MEASURE);
    assertThat(effects(measure, "0.60 passes 0.65 lifts", "ENTER"))
        .containsExactly(send(new Answer.Measured(new Bracket(0.60, 0.65))));
    assertThat(effects(measure, "0.60 passes, 0.65 lifts.", "ENTER"))
        .containsExactly(send(new Answer.Measured(new Bracket(0.60, 0.65))));
    assertThat(effects(measure, "touches.", "ENTER"))
        .containsExactly(send(new Answer.Measured(Bracket.touches())));
    assertThat(effects(measure, "0.", "ENTER")).isEmpty();
    assertThat(effects(measure, "can't measure.", "ENTER"))
        .containsExactly(send(new Answer.CannotMeasure()));
    assertThat(effects(model(Invented.HUMIDITY), "48 %.", "ENTER"))
        .containsExactly(send(new Answer.Value(48)));
    assertThat(effects(measure, "t", "ENTER"))
        .containsExactly(send(new Answer.Measured(Bracket.touches())));
    assertThat(effects(measure, "c", "ENTER")).containsExactly(send(new Answer.CannotMeasure()));
    assertThat(effects(model(Invented.HUMIDITY), "48 %", "ENTER"))
        .containsExactly(send(new Answer.Value(48)));
    assertThat(effects(model(Invented.HUMIDITY), "can't", "ENTER"))
        .containsExactly(send(new Answer.CannotMeasure()));
  }

  @Test
  void aRefusedReadingStaysToBeMended() {
    Model refused = after(model(Invented.MEASURE), "0.3x", "ENTER");
    assertThat(refused.message()).contains("0.30 passes 0.35 lifts");
    assertThat(effects(refused, "BACKSPACE", "ENTER"))
        .containsExactly(send(new Answer.Measured(BracketParser.parse("0.3", 0.05))));
    assertThat(after(model(Invented.MEASURE), "ENTER").message()).isNotEmpty();
  }

  /** The dial is not in view before that is done, since it would order the other way. */
  @Test
  void whatComesBeforeATurnHasItsOwnPage() {
    Model before = model(Invented.FREED);
    String page = Page.draw(before, ZoneOffset.UTC, 80, 24).text();
    assertThat(page).contains("Free the nut first");
    assertThat(page).doesNotContain("TIGHTEN");
    Model turn = after(before, "ESC", "z", "ENTER");
    assertThat(turn.draft()).isEqualTo(new Draft.Turning());
    assertThat(Page.draw(turn, ZoneOffset.UTC, 80, 24).text()).contains("TIGHTEN");
    assertThat(Page.draw(turn, ZoneOffset.UTC, 80, 24).text()).doesNotContain("Free the nut");
    assertThat(after(turn, "ENTER").draft()).isEqualTo(Draft.Made.NOTHING);
    assertThat(after(before, "n").draft()).isEqualTo(Draft.Made.NOTHING);
  }

  /** What follows takes a quarter of an hour, which one key too many is not to cost. */
  @Test
  void aTurnIsAskedAboutAtTheSecondKeyForTakingBack() {
    Model turn = model(Invented.TIGHTEN);
    assertThat(effects(turn, "b")).isEmpty();
    assertThat(effects(turn, "b", "DOWN", "b")).isEmpty();
    assertThat(effects(turn, "b", "b")).containsExactly(send(new Answer.Correct()));
  }

  @Test
  void enterShowsTheAnswersThatAreBelow() {
    Model below = model(Invented.CHOOSE).scrolledTo(0, 5, true);
    assertThat(effects(below, "ENTER")).isEmpty();
    assertThat(after(below, "ENTER").scroll()).isGreaterThan(0);
  }

  @Test
  void aTurnAndItsFeelAreOneAnswerAndNothingIsPreset() {
    Model turn = model(Invented.LOOSEN);
    Model opened = after(turn, "ENTER");
    assertThat(effects(turn, "ENTER")).isEmpty();
    assertThat(opened.draft()).isEqualTo(Draft.Made.NOTHING);
    assertThat(effects(opened, "ENTER", "ENTER", "ENTER")).isEmpty();
    assertThat(effects(opened, "1/8", "ENTER", "ENTER")).isEmpty();
    assertThat(after(opened, "1/8", "ENTER").message()).contains("Mark how it felt");
    assertThat(effects(opened, "1/8", "DOWN", "ENTER"))
        .containsExactly(send(new Answer.Turned(new Turn(-0.125), Feel.SMOOTH)));
    assertThat(effects(model(Invented.TIGHTEN), "ENTER", "DOWN", "DOWN", "1/4", "ENTER"))
        .containsExactly(send(new Answer.Turned(Turn.QUARTER, Feel.STIFF)));
  }

  @Test
  void aTurnThatDidNotReachItsEndIsSaidAsItWas() {
    Model jammed = after(model(Invented.LOOSEN), "ENTER", "DOWN", "DOWN", "DOWN");
    assertThat(effects(jammed, "0", "ENTER", "ENTER"))
        .containsExactly(send(new Answer.Turned(Turn.NONE, Feel.JAMMED)));
  }

  /** One arrow too far would else end the work on a rod that is well. */
  @Test
  void aFeelToStopAtIsAskedAboutOnce() {
    Model once = after(model(Invented.LOOSEN), "ENTER", "0", "DOWN", "DOWN", "DOWN", "ENTER");
    assertThat(once.message()).contains("ends the work on the rod");
    assertThat(effects(once, "UP", "BACKSPACE", "1/8", "ENTER"))
        .containsExactly(send(new Answer.Turned(new Turn(-0.125), Feel.STIFF)));
    assertThat(effects(once, "DOWN", "UP", "ENTER")).isEmpty();
  }

  @Test
  void aFeelMayBeTypedBehindTheAmount() {
    Model made = after(model(Invented.LOOSEN), "ENTER");
    Effect smooth = send(new Answer.Turned(new Turn(-0.125), Feel.SMOOTH));
    for (String typed : List.of("1/8 smooth", "1/8 sm", "1/8 turn smooth.", "45 deg 1")) {
      assertThat(effects(made, typed, "ENTER")).containsExactly(smooth);
    }
    assertThat(effects(made, "1/8 stiff", "UP", "ENTER")).containsExactly(smooth);
    assertThat(effects(made, "1/8 sti", "BACKSPACE", "BACKSPACE", "ENTER")).isEmpty();
    assertThat(effects(made, "1/8 s", "ENTER")).isEmpty();
    assertThat(effects(made, "0 jammed", "ENTER", "ENTER"))
        .containsExactly(send(new Answer.Turned(Turn.NONE, Feel.JAMMED)));
  }

  private static Answer.Felt felt(List<Effect> effects) {
    assertThat(effects).hasSize(1);
    return (Answer.Felt) ((Effect.Send) effects.get(0)).answer();
  }

  /** The engine knows which feel is one to stop at, and refuses any other. */
  @Test
  void aFeelWithoutAnAmountThatCanBeReadIsGivenAlone() {
    Model jammed = after(model(Invented.LOOSEN), "ENTER", "DOWN", "DOWN", "DOWN");
    Map<String, String> wrong =
        Map.of("", "Type how far it turned", "a bit", "a bit", "-1/8", "without a sign");
    wrong.forEach(
        (typed, why) -> {
          Answer.Felt felt = felt(effects(jammed, typed, "ENTER", "ENTER"));
          assertThat(felt.feel()).isEqualTo(Feel.JAMMED);
          assertThat(felt.why()).contains(why);
        });
    assertThat(felt(effects(model(Invented.LOOSEN), "ENTER", "UP", "ENTER", "ENTER")).feel())
        .isEqualTo(Feel.SLIPPED);
  }

  @Test
  void theOtherWayAndTooMuchAreAskedAboutOnce() {
    Model amount = after(model(Invented.LOOSEN), "ENTER", "DOWN", "1/8");
    assertThat(effects(amount, "TAB", "ENTER")).isEmpty();
    assertThat(after(amount, "TAB", "ENTER").message()).contains("other way");
    assertThat(effects(amount, "TAB", "ENTER", "ENTER"))
        .containsExactly(send(new Answer.Turned(Turn.EIGHTH, Feel.SMOOTH)));
    Model tooMuch = after(amount, "BACKSPACE", "BACKSPACE", "BACKSPACE", "45", "ENTER");
    assertThat(tooMuch.message()).contains("more than the limit");
    assertThat(effects(tooMuch, "ENTER"))
        .containsExactly(send(new Answer.Turned(new Turn(-45), Feel.SMOOTH)));
    assertThat(effects(tooMuch, " deg", "ENTER"))
        .containsExactly(send(new Answer.Turned(new Turn(-0.125), Feel.SMOOTH)));
  }

  @Test
  void undoIsOfferedOnlyWhereItCanBe() {
    assertThat(effects(model(Invented.TIGHTEN), "z")).isEmpty();
    assertThat(effects(model(Invented.TIGHTEN), "z", "z")).containsExactly(send(new Answer.Undo()));
    assertThat(effects(model(Invented.LOOSEN), "z")).isEmpty();
  }

  @Test
  void aWaitIsOverWhenItIs() {
    Model waiting = model(Invented.settle(false));
    assertThat(effects(waiting, "ENTER", "e", "ENTER")).isEmpty();
    Model over = waiting.at(Invented.NOON.plus(Duration.ofMinutes(10)));
    assertThat(effects(over, "ENTER")).containsExactly(send(new Answer.Waited(null)));
  }

  @Test
  void endingAWaitEarlyNeedsAReason() {
    Model waiting = model(Invented.settle(true));
    assertThat(effects(waiting, "e", "ENTER", " ", "ENTER")).isEmpty();
    assertThat(effects(waiting, "e", "known neck", "ENTER"))
        .containsExactly(send(new Answer.Waited("known neck")));
  }

  @Test
  void theEndCloses() {
    assertThat(effects(model(Invented.DONE), "ENTER")).containsExactly(new Effect.Leave());
    assertThat(effects(model(Invented.HAND_OVER), "q")).containsExactly(new Effect.Leave());
    assertThat(effects(model(Invented.DONE), "b", "ESC", "x")).isEmpty();
  }

  @Test
  void controlCharactersDoNotGetIntoAField() {
    Field field = Field.EMPTY.with(new Key.Typed(0x1b)).with(new Key.Typed(0x9b));
    assertThat(field.text()).isEmpty();
  }
}
