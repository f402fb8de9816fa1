package quarterturn.report.sheet;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.session.Event;

/** The time at the bench, from the first answer to the last. */
class BenchTimeTest {
  private static Instant at(int minute) {
    return Instant.parse("2027-03-01T10:00:00Z").plusSeconds(60L * minute);
  }

  private static Event did(int minute) {
    return new Event.Told(at(minute), "step", null);
  }

  private static Event left(int minute) {
    return new Event.Left(at(minute), "strings at pitch");
  }

  private static Event again(int minute) {
    return new Event.Resumed(at(minute), List.of(), null, null);
  }

  private static @Nullable Duration of(Event... events) {
    return BenchTime.of(List.of(events));
  }

  @Test
  void itIsTheTimeBetweenTheFirstAnswerAndTheLast() {
    assertThat(of(left(0), did(3), did(10), did(12), left(20))).isEqualTo(Duration.ofMinutes(9));
  }

  @Test
  void withoutAnAnswerThereIsNone() {
    assertThat(of(left(3))).isNull();
    assertThat(of(did(3))).isEqualTo(Duration.ZERO);
  }

  @Test
  void aBreakDoesNotCountAndTheTimeAroundItDoes() {
    assertThat(of(did(0), did(5), left(7), again(100), did(104)))
        .isEqualTo(Duration.ofMinutes(5 + 2 + 4));
  }

  @Test
  void aWaitDoesNotCountNorDoesABreakWithinIt() {
    Event waits = new Event.WaitBegan(at(5), "settle", at(15));
    Event waited = new Event.Waited(at(16), "settle", null);
    assertThat(of(did(0), did(5), waits, waited, did(18))).isEqualTo(Duration.ofMinutes(5 + 2));
    Event late = new Event.Waited(at(42), "settle", null);
    assertThat(of(did(5), waits, left(6), again(40), late, did(44)))
        .isEqualTo(Duration.ofMinutes(2));
  }

  @Test
  void whereItWasKilledTheBreakBeginsWithTheLastAnswer() {
    assertThat(of(did(0), did(5), again(100), did(101))).isEqualTo(Duration.ofMinutes(6));
  }

  @Test
  void whatWasWithdrawnTookItsTime() {
    assertThat(of(did(0), did(5), new Event.Corrected(at(6), "step"), did(9)))
        .isEqualTo(Duration.ofMinutes(9));
  }
}
