package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.craft.rod.Seen;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

class StoryTest {
  private static final Bracket A = new Bracket(0.60, 0.65);
  private static final Bracket B = new Bracket(0.50, 0.55);
  private static final Bracket C = new Bracket(0.40, 0.45);

  private static Event.Past past(int daysAgo, Bracket before, Bracket after) {
    return new Event.Past(Play.NOON.minus(Duration.ofDays(daysAgo)), Turn.EIGHTH, before, after);
  }

  private static Play after(Event.Past... past) throws Exception {
    return Play.of(Play.relief(), Role.BEGINNER, "bass-34", Style.MEDIUM, List.of(past));
  }

  @Test
  void everyCountingReadingAndEveryTurnIsTold() throws Exception {
    Play play = after().to("found-low").read(A).read(A).read("0.60..0.65").to("turn-rod");
    play.turned(0.125, Feel.SMOOTH).to("read-low").read(B);
    assertThat(Story.of(play.state(), ShippedRules.LIMITS))
        .containsExactly(
            new Seen.Read(A), new Seen.Read(A), new Seen.Turned(Turn.EIGHTH), new Seen.Read(B))
        .inOrder();
  }

  @Test
  void otherSessionsComeFirstWithTheRestBetweenThem() throws Exception {
    Play play = after(past(12, A, B), past(10, C, A)).to("found-low").read(B);
    List<Seen> story = Story.of(play.state(), ShippedRules.LIMITS);
    assertThat(story.subList(0, 8))
        .containsExactly(
            new Seen.Read(A),
            new Seen.Turned(Turn.EIGHTH),
            new Seen.Read(B),
            new Seen.Rested(48, true),
            new Seen.Read(C),
            new Seen.Turned(Turn.EIGHTH),
            new Seen.Read(A),
            story.get(7))
        .inOrder();
    assertThat(((Seen.Rested) story.get(7)).hours()).isWithin(1).of(240);
    assertThat(story.get(8)).isEqualTo(new Seen.Read(B));
  }

  @Test
  void aReadingThatEndsOneTurnAndBeginsTheNextIsToldOnce() throws Exception {
    Play play = after(past(10, A, B), past(10, B, C)).to("found-low");
    assertThat(Story.of(play.state(), ShippedRules.LIMITS))
        .containsExactly(
            new Seen.Read(A),
            new Seen.Turned(Turn.EIGHTH),
            new Seen.Read(B),
            new Seen.Turned(Turn.EIGHTH),
            new Seen.Read(C))
        .inOrder();
  }

  @Test
  void theDailyRestIsToldInHours() throws Exception {
    Play play = after().to("found-low").read(A).read(A).read(A).to("turn-rod");
    play.turned(0.5, Feel.SMOOTH).to("read-low").read("0.50..0.55").to("confirm").read(B);
    List<Seen> rests =
        Story.of(play.state(), ShippedRules.LIMITS).stream()
            .filter(Seen.Rested.class::isInstance)
            .toList();
    assertThat(rests).hasSize(1);
    assertThat(((Seen.Rested) rests.get(0)).hours()).isWithin(1).of(24);
  }

  @Test
  void aTurnNobodyIsSureOfBreaksTheStory() throws Exception {
    Play play = after().to("found-low").read(A).read(A).read(A).to("turn-rod");
    play.resumeAfter(Duration.ofMinutes(3)).ok().choose(Recall.UNSURE.word());
    play.to("read-low").read(B);
    assertThat(Story.of(play.state(), ShippedRules.LIMITS))
        .containsExactly(
            new Seen.Read(A),
            new Seen.Read(A),
            new Seen.Rested(Double.POSITIVE_INFINITY),
            new Seen.Read(B))
        .inOrder();
  }
}
