package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static quarterturn.lesson.Demo.T;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Value;
import quarterturn.unit.Turn;

class DutiesTest {
  @Test
  void oneAloneDoesEverything() {
    assertThat(Duties.of(List.of("Ana"), 1)).isEmpty();
    assertThat(Duties.words(List.of("Ana"), 1)).isEmpty();
  }

  @Test
  void twoShareFourDutiesAndChangeWithEachPart() {
    List<String> two = List.of("Ana", "Ben");
    assertThat(Duties.words(two, 1)).isEqualTo("Ana turns and writes down; Ben reads and looks on");
    assertThat(Duties.words(two, 2)).isEqualTo("Ben turns and writes down; Ana reads and looks on");
  }

  @Test
  void everybodyHasSomethingToDoAndComesToTurnAndRead() {
    List<String> six = List.of("Ana", "Ben", "Cleo", "Dov", "Eda", "Fin");
    Set<String> turned = new HashSet<>();
    Set<String> read = new HashSet<>();
    for (int part = 1; part <= 6; part++) {
      var duties = Duties.of(six, part);
      assertThat(duties.keySet()).containsExactlyElementsIn(six);
      duties.forEach(
          (who, what) -> {
            if (what.contains("turns")) {
              turned.add(who);
            }
            if (what.contains("reads")) {
              read.add(who);
            }
          });
    }
    assertThat(turned).containsExactlyElementsIn(six);
    assertThat(read).containsExactlyElementsIn(six);
  }

  @Test
  void inALessonOfTwoTurnsBothTurnAndRead() {
    List<LessonEvent> events = new ArrayList<>();
    List<String> turn = new ArrayList<>();
    List<String> read = new ArrayList<>();
    for (String part : List.of("Measure", "Turn", "Settle and read", "Turn", "Settle and read")) {
      Spot spot = new Spot("relief", "step", part, events.size() + 1);
      events.add(new LessonEvent.Stepped(T, spot));
      boolean turns = part.equals("Turn");
      Duties.of(List.of("Ana", "Ben"), Duties.moves(events))
          .forEach(
              (who, what) -> {
                if (what.contains(turns ? "turns" : "reads")) {
                  (turns ? turn : read).add(who);
                }
              });
      if (turns) {
        events.add(new LessonEvent.Opened(T, spot, true, false, null, 0.05, null));
        events.add(new LessonEvent.Resulted(T, events.size(), new Value.Rod(new Turn(0.125))));
      }
    }
    assertThat(turn).containsExactly("Ben", "Ana").inOrder();
    assertThat(read).containsExactly("Ben", "Ben", "Ana").inOrder();
  }
}
