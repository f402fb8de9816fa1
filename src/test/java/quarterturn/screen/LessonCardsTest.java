package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;
import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.DemoCourse;
import quarterturn.lesson.student.LessonSession;
import quarterturn.screen.state.Effect;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.unit.Bracket;

/** The cards over a bench's session, by their keys. The neck is invented. */
class LessonCardsTest {
  private static final String SEEN = "What the gauges show";

  private static final String SETTINGS = "From settings.yaml: own files in /x.";

  @TempDir Path folder;
  private @Nullable LessonSession open;
  private long nanos;

  private LessonSession session() {
    return requireNonNull(open);
  }

  private LessonCards cards(boolean blind, String... students) throws Exception {
    return cards(DemoCourse.session(folder, blind, students));
  }

  private LessonCards cards(LessonSession session) throws Exception {
    open = session;
    LessonCards cards = new LessonCards(session(), "lesson join x", () -> nanos, SETTINGS);
    cards.look();
    return cards;
  }

  private static String asks(LessonCards cards) {
    return ((Question.Asked) requireNonNull(cards.card())).asks();
  }

  @AfterEach
  void close() throws Exception {
    session().close();
  }

  /** Types in one's own time, so that what is to be thought about is thought about. */
  private void type(LessonCards cards, String text) throws Exception {
    nanos += 6_000_000_000L;
    hurry(cards, text);
  }

  private static void hurry(LessonCards cards, String text) throws Exception {
    for (int c : text.codePoints().toArray()) {
      cards.key(new Key.Typed(c));
    }
    cards.key(Key.Named.ENTER);
    cards.look();
  }

  private String drawn(LessonCards cards) throws Exception {
    return cards.draw(session().overview(), 80, 24).text();
  }

  private void toTheReading(LessonCards cards) throws Exception {
    while (cards.card() == null) {
      Prompt prompt = session().prompt();
      session()
          .answer(prompt instanceof Prompt.Wait ? new Answer.Waited(null) : new Answer.Confirmed());
      cards.look();
    }
  }

  @Test
  void aBenchWithNobodyAtItAsksWhoIsThere() throws Exception {
    LessonCards cards = cards(false);
    assertThat(asks(cards)).isEqualTo("Who is at this bench?");
    assertThat(drawn(cards)).contains(SETTINGS);
    type(cards, "Ana, Ben");
    assertThat(cards.card()).isNull();
    assertThat(cards.news()).startsWith("In this part: Ana turns");
  }

  @Test
  void aPredictionIsLockedBeforeAnythingIsSeen() throws Exception {
    LessonCards cards = cards(false, "Ana", "Ben");
    assertThat(cards.news()).startsWith(SETTINGS + " In this part: ");
    toTheReading(cards);
    assertThat(drawn(cards)).contains("The gap in mm. 1 Ana, 2 Ben");
    assertThat(drawn(cards)).doesNotContain(SEEN);
    type(cards, "0.5");
    assertThat(drawn(cards)).contains("Begin with the row's number.");
    cards.key(Key.Named.ESC);
    type(cards, "2 0.5");
    assertThat(asks(cards)).isEqualTo("The gap in mm. 1 Ana");
    assertThat(drawn(cards)).doesNotContain(SEEN);
    type(cards, "0.6");
    assertThat(cards.card()).isNull();
    assertThat(String.join(" ", session().prompt().said().notes())).contains(SEEN);
  }

  @Test
  void escGoesBackAndNeverLeaves() throws Exception {
    LessonCards cards = cards(false, "Ana", "Ben");
    toTheReading(cards);
    cards.key(new Key.Typed('1'));
    cards.key(Key.Named.ESC);
    assertThat(drawn(cards)).contains("[        ");
    assertThat(cards.key(Key.Named.ESC)).isInstanceOf(Effect.None.class);
    assertThat(drawn(cards)).contains("Esc never leaves; F10 does.");
  }

  @Test
  void whatIsReadAloneIsDrawnAsStars() throws Exception {
    LessonCards cards = cards(true, "Ana", "Ben");
    toTheReading(cards);
    type(cards, "1 0.5, 2 0.6");
    type(cards, "Ben");
    for (int c : "0.63".codePoints().toArray()) {
      cards.key(new Key.Typed(c));
    }
    assertThat(drawn(cards)).contains("[ ****");
    assertThat(drawn(cards)).doesNotContain("0.63");
    type(cards, " passes 0.68 lifts");
    assertThat(drawn(cards)).doesNotContain("0.63");
    type(cards, "0.60 passes 0.65 lifts");
    assertThat(drawn(cards)).contains("What you read");
    assertThat(drawn(cards)).contains("You read 0.60 to 0.65 mm; 0.63 to 0.68 mm.");
    type(cards, "");
    assertThat(cards.card()).isNull();
  }

  @Test
  void anyoneStopsWithOneKeyAndAnEnter() throws Exception {
    LessonCards cards = cards(false, "Ana");
    cards.stop();
    assertThat(drawn(cards)).contains("To stop is always right.");
    cards.key(Key.Named.ESC);
    assertThat(session().lesson().keptBy()).isEmpty();
    cards.stop();
    type(cards, "it creaks");
    assertThat(drawn(cards)).contains("STOPPED: it creaks.");
    DemoCourse.release(session(), folder);
    assertThat(cards.look()).isTrue();
    assertThat(cards.card()).isNull();
  }

  /** In the middle of a text no letter stops anything, and no key alone. */
  @Test
  void theStopKeyTwiceStopsAndTheTextIsKept() throws Exception {
    LessonCards cards = cards(false, "Ana");
    toTheReading(cards);
    press(cards, "0.4 ss");
    assertThat(session().lesson().keptBy()).isEmpty();
    cards.stop();
    cards.look();
    assertThat(session().lesson().keptBy()).isEmpty();
    cards.key(Key.Named.ESC);
    assertThat(drawn(cards)).contains("[ 0.4 ss");
    cards.stop();
    cards.stop();
    cards.look();
    assertThat(drawn(cards)).contains("STOPPED.");
    DemoCourse.release(session(), folder);
    cards.look();
    assertThat(drawn(cards)).contains("[ 0.4 ss");
  }

  private static void press(LessonCards cards, String text) throws Exception {
    for (int c : text.codePoints().toArray()) {
      cards.key(new Key.Typed(c));
    }
  }

  @Test
  void resultAndPredictionStandSideBySide() throws Exception {
    LessonCards cards = cards(false, "Ana");
    toTheReading(cards);
    type(cards, "0.5 so");
    session().answer(new Answer.Measured(new Bracket(0.7, 0.75)));
    cards.look();
    assertThat(drawn(cards)).contains("Predicted: Ana 0.5 mm.");
    assertThat(drawn(cards)).contains("It read: 0.70 to 0.75 mm.");
    assertThat(drawn(cards)).doesNotContain("It came");
    assertThat(drawn(cards)).contains("The instrument lies flat on its back");
    type(cards, "a");
    assertThat(drawn(cards)).contains("It came otherwise than predicted.");
    type(cards, "");
    // What repeats is not predicted.
    assertThat(cards.card()).isNull();
  }

  @Test
  void noAnswerToAQuestionCountsForFiveSeconds() throws Exception {
    LessonCards cards = cards(DemoCourse.of("relief", folder, false, "Ana"));
    for (int i = 0;
        i < 60 && !(cards.card() instanceof Question.Asked asked && asked.ponder());
        i++) {
      if (cards.card() == null) {
        session().answer(ordinary(session().prompt()));
        cards.look();
      } else {
        type(cards, cards.card() instanceof Question.Asked ? "50 so" : "");
      }
    }
    assertThat(drawn(cards)).contains("Think about it");
    nanos += 4_900_000_000L;
    hurry(cards, "0.5 so");
    assertThat(drawn(cards)).contains("an answer counts after 5 seconds");
    nanos += 200_000_000L;
    hurry(cards, "");
    assertThat(cards.card()).isNull();
  }

  private static Answer ordinary(Prompt prompt) {
    if (prompt instanceof Prompt.Choose choose) {
      return new Answer.Chose(choose.options().get(0).id());
    }
    return prompt instanceof Prompt.Measure
        ? new Answer.Value(50)
        : prompt instanceof Prompt.Wait ? new Answer.Waited(null) : new Answer.Confirmed();
  }

  @Test
  void leavingAsksFirst() throws Exception {
    LessonCards cards = cards(false);
    cards.key(new Key.Function(10));
    cards.look();
    assertThat(drawn(cards)).contains("If you leave now: ");
    assertThat(cards.key(new Key.Typed('n'))).isInstanceOf(Effect.None.class);
    cards.look();
    assertThat(asks(cards)).isEqualTo("Who is at this bench?");
    cards.key(new Key.Function(10));
    cards.key(Key.Named.ESC);
    assertThat(asks(cards)).isEqualTo("Who is at this bench?");
    cards.key(new Key.Function(10));
    assertThat(cards.key(new Key.Typed('y'))).isInstanceOf(Effect.Leave.class);
  }

  /** Stopping can't wait for anything. */
  @Test
  void aWordOfTheLessonWorksWhileEverybodyThinks() throws Exception {
    LessonCards cards = cards(false, "Ana");
    toTheReading(cards);
    hurry(cards, "who");
    assertThat(drawn(cards)).contains("Here: Ana.");
    hurry(cards, "stop it creaks");
    assertThat(drawn(cards)).contains("STOPPED: it creaks.");
  }
}
