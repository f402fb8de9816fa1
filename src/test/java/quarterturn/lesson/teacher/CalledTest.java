package quarterturn.lesson.teacher;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static quarterturn.lesson.Demo.T;
import static quarterturn.lesson.Demo.came;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.Demo;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.store.WriterLog;
import quarterturn.session.RefusedException;

class CalledTest {
  private static final List<DeskView.Row> ROWS =
      DeskView.of(
              Demo.PLAN,
              List.of(
                  bench("a", "By the door", came("Ana"), came("Ben")),
                  bench("b", "By the door left", came("Ana"), came("Ana Lou")),
                  bench("c", "Window", came("Cleo"), new LessonEvent.Went(T, "Cleo")),
                  bench("d", "Window", came("Cleo"))))
          .rows();

  private static WriterLog bench(String writer, String name, LessonEvent... more) {
    LessonEvent[] all = new LessonEvent[more.length + 1];
    all[0] = new LessonEvent.Joined(T, name);
    System.arraycopy(more, 0, all, 1, more.length);
    return Demo.bench(writer, all);
  }

  private static String bench(String typed) throws RefusedException {
    Called.Bench found = Called.bench(ROWS, typed);
    return found.row().bench().bench() + "|" + found.rest();
  }

  private static String student(String typed) throws RefusedException {
    Called.Student found = Called.student(ROWS, typed);
    return found.row().bench().bench() + "|" + found.name() + "|" + found.rest();
  }

  private static String refused(String typed) {
    return String.valueOf(assertThrows(RefusedException.class, () -> bench(typed)).getMessage());
  }

  @Test
  void theLongestNameThatALineBeginsWithIsMeant() throws RefusedException {
    assertThat(bench("by the door 0.30 to 0.35")).isEqualTo("a|0.30 to 0.35");
    assertThat(bench("By The Door left 0.30")).isEqualTo("b|0.30");
    assertThat(refused("by the doors")).startsWith("No bench is called");
  }

  @Test
  void anIdIsAName() throws RefusedException {
    assertThat(bench("c")).isEqualTo("c|");
    assertThat(refused("Window")).isEqualTo("More than one bench is called so; type one of c, d.");
  }

  @Test
  void whatIsThereIsNamed() {
    assertThat(refused("roof"))
        .contains("There are: By the door, By the door left, Window, Window");
    assertThat(refused(" ")).startsWith("Say which bench");
    assertThat(assertThrows(RefusedException.class, () -> Called.bench(List.of(), "a")))
        .hasMessageThat()
        .isEqualTo("No bench has joined yet.");
  }

  @Test
  void aStudentIsFoundWhereTheySit() throws RefusedException {
    assertThat(student("ben own")).isEqualTo("a|Ben|own");
    assertThat(student("Ana Lou own")).isEqualTo("b|Ana Lou|own");
    assertThat(student("b Ana own")).isEqualTo("b|Ana|own");
    assertThat(student("Cleo")).isEqualTo("d|Cleo|");
    RefusedException twice = assertThrows(RefusedException.class, () -> student("Ana own"));
    assertThat(twice).hasMessageThat().contains("put the bench before it");
    RefusedException nobody = assertThrows(RefusedException.class, () -> student("Zoe own"));
    assertThat(nobody).hasMessageThat().contains("Ana, Ana, Ana Lou, Ben, Cleo, Cleo");
  }
}
