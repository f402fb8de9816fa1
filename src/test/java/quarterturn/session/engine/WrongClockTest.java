package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/** A session that is taken up again by a clock that was wrong before, or is now. */
class WrongClockTest {
  private static final Duration REST = Duration.ofHours(24);

  /** A session left in the daily rest, after half a turn. */
  private static Play played;

  private static List<Event> left = List.of();

  @BeforeAll
  static void play() throws Exception {
    played = Play.beginner("bass-34").to("found-low");
    played.read("1.50..1.55").read("1.50..1.55").read("1.50..1.55").to("turn-rod");
    played.turned(Feel.SMOOTH).to("read-low").read("1.40..1.45").to("turn-rod");
    played.turned(Feel.SMOOTH).to("read-low").read("1.10..1.15");
    assertThat(played.step()).isEqualTo("rest");
    left = List.copyOf(played.events);
  }

  private static Play resting() {
    played.events.clear();
    played.events.addAll(left);
    return played;
  }

  private static void resume(Play play, Instant at, Carried carried) throws Exception {
    play.bench =
        LiveBench.resume(
            play.engine,
            play.events::addAll,
            "test",
            List.copyOf(play.events),
            new Event.Resumed(at, List.of(), carried),
            Clock.fixed(at, ZoneOffset.UTC));
    play.ok();
  }

  private static Instant until(Play play) {
    return ((Prompt.Wait) play.prompt()).until();
  }

  @ParameterizedTest
  @ValueSource(strings = {"1970-01-01T00:00:00Z", "2015-01-01T00:10:00Z", "2027-02-20T08:00:00Z"})
  void aWaitThatBeganInTheFutureLastsItsOwnLengthFromNow(String now) throws Exception {
    Play play = resting();
    resume(play, Instant.parse(now), Carried.NOTHING);
    assertThat(play.bench.now()).isEqualTo(Instant.parse(now));
    assertThat(until(play)).isEqualTo(Instant.parse(now).plus(REST));
    play.waited().to("confirm").read("1.10..1.15").to("turn-rod");
    assertThat(play.bench.overview().today()).isEqualTo(Turn.NONE);
  }

  @Test
  void theClockComesBackAndTheSessionWithIt() throws Exception {
    Play play = resting();
    Instant wrong = Instant.parse("2099-01-01T00:00:00Z");
    resume(play, wrong, new Carried(List.of(), List.of(), List.of(), wrong, doubted(play)));
    assertThat(until(play)).isEqualTo(wrong.plus(REST));
    Instant right = Play.NOON.plus(Duration.ofHours(3));
    resume(play, right, Carried.NOTHING);
    assertThat(play.bench.now()).isEqualTo(right);
    assertThat(until(play)).isAtMost(right.plus(REST));
    assertWithMessage("the recap says so")
        .that(EngineQuestions.recap(play.state(), away(play), Play.relief().main()))
        .contains("The clock was set back since you left, so every wait counts from now.");
  }

  private static Pending.Break away(Play play) {
    Instant right = play.bench.now();
    return new Pending.Break(right.plusSeconds(1), right, "left in order", false);
  }

  private static List<Carried.Said> doubted(Play play) {
    Instant last = play.state().last();
    return List.of(new Carried.Said(last, "test", Carried.Answer.CLOCK, null, null));
  }

  @Test
  void aLeapThatIsNotBelievedBeginsTheWaitAnew() throws Exception {
    Instant later = Instant.parse("2038-01-19T03:14:08Z");
    Play believed = resting();
    resume(believed, later, Carried.NOTHING);
    assertThat(until(believed)).isLessThan(later);
    Play doubted = resting();
    resume(doubted, later, new Carried(List.of(), List.of(), List.of(), later, doubted(doubted)));
    assertThat(until(doubted)).isEqualTo(later.plus(REST));
    assertThat(doubted.bench.overview().today()).isEqualTo(new Turn(0.5));
  }

  @Test
  void aLittleSetBackLengthensNothing() throws Exception {
    for (Duration back : List.of(Duration.ofMinutes(5), Duration.ofMinutes(20))) {
      Play play = resting();
      Instant until = Objects.requireNonNull(play.state().pending().waiting()).until();
      Instant at = play.state().last().plus(Duration.ofHours(9));
      resume(play, at, Carried.NOTHING);
      resume(play, at.minus(back), Carried.NOTHING);
      assertThat(until(play)).isEqualTo(until);
    }
  }

  @Test
  void aTurnOfAnotherSessionThatIsDatedInTheFutureWasMadeBeforeThisOne() throws Exception {
    Instant wrong = Instant.parse("2031-01-01T00:00:00Z");
    List<Event.Past> half = List.of(new Event.Past(wrong, new Turn(0.5), null, null));
    Play play = Play.of(Play.relief(), Role.BEGINNER, "bass-34", Style.MEDIUM, half);
    play.to("found-low").read("1.50..1.55").read("1.50..1.55").read("1.50..1.55");
    while (!(play.prompt() instanceof Prompt.Wait wait && wait.rest())) {
      play.ordinary();
    }
    assertThat(until(play)).isAtMost(play.bench.now().plus(REST));
    play.waited();
    assertThat(play.bench.overview().today()).isEqualTo(Turn.NONE);
  }
}
