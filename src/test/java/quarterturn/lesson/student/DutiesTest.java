package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

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
}
