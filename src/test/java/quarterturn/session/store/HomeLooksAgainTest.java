package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.ShippedRules;
import quarterturn.session.Question;

/** A home view that stays open says when a wait is over. */
class HomeLooksAgainTest {
  private List<HomeDialogue.Item> now = List.of(session("8 minutes left", true));
  private final HomeDialogue home =
      new HomeDialogue(
          List.of(),
          now,
          ShippedRules.ALL.results(),
          List.of(),
          List.of("blue"),
          Map.of(),
          choice -> {},
          new Records());

  private final class Records implements HomeDialogue.Past {
    @Override
    public List<HomeDialogue.Item> begun() {
      return now;
    }

    @Override
    public List<String> all() {
      return List.of();
    }

    @Override
    public List<String> history(String instrument) {
      return List.of();
    }

    @Override
    public String standing(String session) {
      return "strings at pitch";
    }

    @Override
    public void discard(String session) {}
  }

  private static HomeDialogue.Item session(String state, boolean waits) {
    return new HomeDialogue.Item(
        new Question.Option("a-1", "Neck relief on blue: " + state, "", "To go on with"),
        new HomeDialogue.Choice.Resume("a-1"),
        waits);
  }

  private String first() {
    Question.Choose asked = (Question.Choose) Objects.requireNonNull(home.question());
    return asked.options().get(0).label();
  }

  @Test
  void whatIsAsItWasIsNoNews() throws Exception {
    assertThat(home.lookAgain()).isFalse();
  }

  @Test
  void aWaitThatIsOverIsSaid() throws Exception {
    now = List.of(session("settled, ready", false));
    assertThat(home.lookAgain()).isTrue();
    assertThat(first()).isEqualTo("Neck relief on blue: settled, ready");
  }

  @Test
  void anotherPageIsLeftAsItIs() throws Exception {
    home.take("blue");
    now = List.of(session("settled, ready", false));
    assertThat(home.lookAgain()).isFalse();
    home.back();
    assertThat(home.lookAgain()).isTrue();
  }
}
