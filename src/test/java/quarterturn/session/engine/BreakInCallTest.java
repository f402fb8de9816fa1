package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/** A break in a procedure that another one called. Readings are invented. */
class BreakInCallTest {
  @Test
  void aLongOneSendsTheCallerToTuneBeforeItReadsAString() throws Exception {
    Play play = inTheSearchForABuzz();
    play.resumeAfter(Duration.ofHours(5)).ok();
    assertThat(play.state().bench().has(Fact.AT_PITCH)).isFalse();
    play.to("heard").choose("unheard");
    assertThat(play.step()).isEqualTo("tune-again");
    assertThat(play.prompt().said().procedure()).isEqualTo("sign-off");
  }

  @Test
  void afterAShortOneTheCallerReadsWithoutTuning() throws Exception {
    Play play = inTheSearchForABuzz();
    play.resumeAfter(Duration.ofMinutes(5)).ok();
    play.to("heard").choose("unheard");
    play.to("relief-left");
    assertThat(play.state().position().reached("tune")).isEqualTo(1);
  }

  private static Play inTheSearchForABuzz() throws Exception {
    Library library = Play.library("sign-off");
    Kind kind = library.kind("bass-34");
    Stream<Event.Before> action =
        kind.strings().stream().map(s -> before(Quantity.ACTION, s, null, 2.4));
    Stream<Event.Before> relief =
        Stream.of(before(Quantity.RELIEF, kind.strings().get(0), new Bracket(0.35, 0.4), null));
    List<Event.Before> known = Stream.concat(relief, action).toList();
    Play play =
        Play.of(
            library, Role.BEGINNER, "bass-34", Style.MEDIUM, known.toArray(Event.Before[]::new));
    play.to("play").choose("buzzes");
    assertThat(play.prompt().said().procedure()).isEqualTo("buzz");
    assertThat(play.state().bench().has(Fact.AT_PITCH)).isTrue();
    return play;
  }

  private static Event.Before before(
      Quantity quantity, String string, @Nullable Bracket bracket, @Nullable Double value) {
    return new Event.Before(Play.NOON, quantity, string, bracket, value, List.of());
  }
}
