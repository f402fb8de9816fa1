package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import quarterturn.session.Question;

/** Enter at home goes on with the first session that does not wait. */
class HomeMarkTest {
  private static HomeDialogue.Item session(String name, boolean waits) {
    return new HomeDialogue.Item(
        new Question.Option(name, name, "", "To go on with"),
        new HomeDialogue.Choice.Resume(name),
        waits);
  }

  private static HomeDialogue.Choice entered(HomeDialogue.Item... begun) throws Exception {
    HomeDialogue home = HomeDialogues.of(List.of(begun), List.of());
    home.take("");
    return home.choice();
  }

  @Test
  void whatWaitsIsPassedOver() throws Exception {
    assertThat(entered(session("a-1", true), session("b-2", false), session("c-3", false)))
        .isEqualTo(new HomeDialogue.Choice.Resume("b-2"));
  }

  @Test
  void whereAllWaitTheFirstIsLookedAt() throws Exception {
    assertThat(entered(session("a-1", true), session("b-2", true)))
        .isEqualTo(new HomeDialogue.Choice.Resume("a-1"));
  }

  private static Question.Choose asked(HomeDialogue home) {
    return (Question.Choose) Objects.requireNonNull(home.question());
  }

  @Test
  void itIsMarkedAndItsNumberIsSaid() {
    HomeDialogue home =
        HomeDialogues.of(List.of(session("a-1", true), session("b-2", false)), List.of());
    Question.Choose asked = asked(home);
    assertThat(asked.marked()).isEqualTo(1);
    assertThat(asked.asks()).isEqualTo("What would you like to do? [2]");
  }

  @Test
  void withoutASessionEnterChoosesNothing() {
    Question.Choose asked = asked(HomeDialogues.of(List.of(), List.of("blue")));
    assertThat(asked.marked()).isEqualTo(0);
    assertThat(asked.asks()).isEqualTo("What would you like to do?");
  }
}
