package quarterturn.lesson.teacher;

import static com.google.common.truth.Truth.assertThat;
import static quarterturn.lesson.Demo.T;
import static quarterturn.lesson.Demo.came;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.Demo;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Spot;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.Shelf;

class RosterTest {
  private static LessonEvent at(String procedure, String step, String part, int asked) {
    return new LessonEvent.Stepped(T, new Spot(procedure, step, part, asked));
  }

  private static List<String> shares(LessonEvent... events) {
    return Roster.of(Demo.PLAN, List.of(Demo.bench("a", events)), InventedLesson.SADDLES).stream()
        .map(
            s ->
                s.student()
                    + " in "
                    + s.part()
                    + ": "
                    + String.join(", ", s.duties())
                    + "; "
                    + s.readings()
                    + " "
                    + s.turns()
                    + " "
                    + s.saddles())
        .toList();
  }

  @Test
  void whoReadsAndWhoTurnsGoesByTheDutyOfThePart() {
    List<String> shares =
        Roster.of(InventedLesson.PLAN, InventedLesson.logs(), InventedLesson.SADDLES).stream()
            .filter(s -> s.bench().equals("Red"))
            .map(s -> s.student() + " " + s.part() + " " + s.readings() + s.turns() + s.saddles())
            .toList();
    assertThat(shares)
        .containsExactly(
            "Ana relief, Before you start 000",
            "Ben relief, Before you start 000",
            "Ana relief, Measure 100",
            "Ben relief, Measure 000",
            "Ana relief, The turn 000",
            "Ben relief, The turn 000")
        .inOrder();
  }

  @Test
  void eachReadsForThemselvesWhereAGapIsReadBlind() {
    assertThat(
            Roster.of(InventedLesson.PLAN, InventedLesson.logs(), InventedLesson.SADDLES).stream()
                .filter(s -> s.bench().equals("Green") && s.part().endsWith("Measure"))
                .map(Roster.Share::readings))
        .containsExactly(1, 1, 1);
  }

  @Test
  void aSaddleIsSetWhenItsStepIsLeftAndOneAloneDoesEverything() {
    assertThat(
            shares(
                came("Ana"),
                at("action", "set-saddles", "The saddles", 1),
                at("action", "set-saddles", "The saddles", 2),
                at("action", "read", "Measure", 3)))
        .containsExactly(
            "Ana in action, The saddles: everything; 0 0 2",
            "Ana in action, Measure: everything; 0 0 0")
        .inOrder();
    assertThat(shares(came("Ana"), at("action", "set-saddles", "The saddles", 1)))
        .containsExactly("Ana in action, The saddles: everything; 0 0 0");
  }

  @Test
  void whoHasLeftDoesNothingMore() {
    LessonEvent turn =
        new LessonEvent.Opened(
            T, new Spot("relief", "turn", "The turn", 1), true, false, null, 1 / 16.0, null);
    assertThat(
            shares(
                came("Ana"),
                came("Ben"),
                at("relief", "turn", "The turn", 1),
                new LessonEvent.Went(T, "Ana"),
                turn,
                new LessonEvent.Resulted(T, 5, InventedLesson.TURN),
                new LessonEvent.Resulted(T, 5, InventedLesson.TURN)))
        .containsExactly(
            "Ana in relief, The turn: turns, writes down; 0 0 0",
            "Ben in relief, The turn: everything; 0 1 0")
        .inOrder();
  }

  @Test
  void theStepsThatSetASaddleAreThoseOfTheProcedures() throws IOException, UnreadableException {
    assertThat(Roster.saddleSteps(new Shelf(null).load("setup")))
        .containsExactly("action/set-saddles", "intonation/set-saddles");
  }
}
