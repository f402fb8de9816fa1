package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;
import quarterturn.session.listing.Glance;
import quarterturn.session.listing.Glances;
import quarterturn.unit.Dates;
import quarterturn.unit.Turn;

/** The order of unfinished sessions, and what every list says of them. */
class WorkTest {
  private static final Dates DATES = new Dates(ZoneOffset.UTC);
  private static final Instant NOW = Samples.at(60);

  private static Glance glance(String name, Event... events) {
    List<Event> all = new ArrayList<>(List.of(Samples.started(0, name)));
    all.addAll(List.of(events));
    Journal.Header header = new Journal.Header(name, "relief", 3, "d1");
    return Glances.of(name, new Journal.Contents(header, all, null, 0));
  }

  private static Event waits(int from, int until) {
    return new Event.WaitBegan(Samples.at(from), "settle", Samples.at(until));
  }

  private static Event left(int at, String standing) {
    return new Event.Left(Samples.at(at), standing);
  }

  private static final Glance HALF =
      glance(
          "half",
          new Event.Offered(Samples.at(5), "turn-rod", Turn.EIGHTH),
          left(6, "in the middle of a rod turn"));
  private static final Glance TURNED =
      glance(
          "turned",
          Samples.turned(5, Turn.EIGHTH),
          left(6, "rod turned, strings not yet back at pitch"));
  private static final Glance SETTLED =
      glance("settled", Samples.turned(5, Turn.EIGHTH), waits(6, 50), left(7, "rod turned"));
  private static final Glance SETTLES =
      glance("settles", Samples.turned(5, Turn.EIGHTH), waits(50, 75), left(51, "rod turned"));
  private static final Glance READ =
      glance(
          "read",
          Samples.turned(5, Turn.EIGHTH),
          Samples.relief(20, Which.LOWEST, 0.3, 0.35),
          left(21, "strings at pitch, rod not turned since the last reading"));
  private static final Glance RESTED = glance("rested", waits(6, 40), left(7, "strings at pitch"));
  private static final Glance RESTS = glance("rests", waits(50, 61), left(51, "strings at pitch"));

  private static Work work(Glance glance, @Nullable String ticket) {
    return new Work(glance, ticket, NOW);
  }

  @Test
  void aWaitThatBeganInTheFutureLastsNoLongerThanItself() {
    int years = 60 * 24 * 1500;
    Glance future = glance("future", waits(years, years + 15), left(years + 5, "strings at pitch"));
    assertThat(work(future, null).words(DATES)).isEqualTo("waits until 10:10, 10 minutes left");
    assertThat(work(future, null).until()).isEqualTo(Samples.at(70));
  }

  @Test
  void aHalfMadeTurnIsFirstThenATurnedRodThenWhatIsReady() {
    List<Glance> in = List.of(HALF, SETTLED, TURNED, SETTLES, RESTED, READ, RESTS);
    for (int seed = 0; seed < 20; seed++) {
      List<Glance> mixed = new ArrayList<>(in);
      Collections.shuffle(mixed, new Random(seed));
      assertThat(Work.of(mixed, Map.of(), NOW).stream().map(Work::glance).toList())
          .containsExactlyElementsIn(in)
          .inOrder();
    }
  }

  @Test
  void whatIsOverIsNoWork() {
    Glance ended =
        glance("a", new Event.Ended(Samples.at(3), "done", false, "in-window", "It is in."));
    Glance gone = glance("b", new Event.Discarded(Samples.at(3), "strings at pitch"));
    assertThat(Work.of(List.of(ended, gone), Map.of(), NOW)).isEmpty();
  }

  @Test
  void itsStateIsSaidInWordsWithTheTimeLeft() {
    assertThat(work(HALF, null).words(DATES)).isEqualTo("in the middle of a rod turn");
    assertThat(work(SETTLED, null).words(DATES)).isEqualTo("rod turned, settled, ready");
    assertThat(work(SETTLES, null).words(DATES))
        .isEqualTo("rod turned, waits until " + DATES.clock(Samples.at(75)) + ", 15 minutes left");
    assertThat(work(TURNED, null).words(DATES))
        .isEqualTo("rod turned, strings not yet back at pitch");
    assertThat(work(RESTED, null).words(DATES)).isEqualTo("settled, ready");
    assertThat(work(glance("killed"), null).words(DATES)).isEqualTo("broken off");
  }

  @Test
  void aListHasRoomForAFewOfThem() {
    assertThat(work(HALF, null).brief()).isEqualTo("rod turn half made");
    assertThat(work(SETTLED, null).brief()).isEqualTo("rod turned, settled, ready");
    assertThat(work(RESTS, null).brief()).isEqualTo("1 minute left");
    assertThat(work(TURNED, null).brief()).isEqualTo("rod turned");
    assertThat(work(READ, null).brief()).isEqualTo("strings at pitch");
    assertThat(work(READ, "4711").on()).isEqualTo("read, ticket 4711");
  }

  /** What was left and taken up again, and then killed, was not left as it was then. */
  @Test
  void whatWasTakenUpSinceItWasLeftIsBrokenOff() {
    Glance killed =
        glance(
            "a",
            left(3, "strings at pitch"),
            new Event.Resumed(Samples.at(9), List.of(), null, "Ben"));
    assertThat(work(killed, null).words(DATES)).isEqualTo("broken off");
    assertThat(killed.by()).isEqualTo("Ben");
  }
}
