package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.line.LineHome;
import quarterturn.procedure.Limits;
import quarterturn.procedure.ShippedRules;
import quarterturn.report.Dates;
import quarterturn.screen.HomeItem;
import quarterturn.session.Event;
import quarterturn.session.store.Dues;
import quarterturn.session.store.Store;

class HomeLineTest {
  private static final Limits.Rechecks RECHECKS = ShippedRules.LIMITS.rechecks();
  private static final Instant NOW = Instant.parse("2027-03-03T12:00:00Z");

  private static Store.Glance glance(
      String name, int hoursAgo, @Nullable Instant until, Event.@Nullable Ended ended) {
    Instant began = NOW.minus(Duration.ofHours(hoursAgo));
    return new Store.Glance(
        name,
        "relief",
        "practice-bass",
        "bass-34",
        began,
        began,
        ended,
        "strings at pitch",
        until,
        null,
        false,
        ended == null ? null : began,
        began);
  }

  private static HomeLine.Lines lines(List<Store.Glance> sessions) {
    return HomeLine.lines(
        sessions,
        Dues.pressing(Dues.of(sessions, Set.of("practice-bass"), RECHECKS, NOW), RECHECKS, NOW),
        NOW,
        new Dates(ZoneOffset.UTC));
  }

  @Test
  void aReCheckBeginsReliefOnItsInstrument() {
    Instant end = NOW.minus(Duration.ofHours(26));
    Event.Ended ended = new Event.Ended(end, "done", false, "in-window", "It is in.");
    HomeLine.Lines lines = lines(List.of(glance("a-1", 27, null, ended)));
    assertThat(lines.unfinished()).isEmpty();
    assertThat(lines.due())
        .containsExactly(
            new HomeLine(
                new HomeItem(
                    "practice-bass",
                    "A day after the rod was turned, read the relief again.",
                    "Due 2 hours ago (10:00)"),
                new LineHome.Item(
                    "practice-bass",
                    "practice-bass: A day after the rod was turned, read the relief again",
                    "Due 2 hours ago (10:00)",
                    new LineHome.Choice.Begin("relief", "practice-bass"))));
    assertThat(HomeLine.Lines.choice(lines.due(), 0))
        .isEqualTo(new LineHome.Choice.Begin("relief", "practice-bass"));
  }

  @Test
  void anUnfinishedSessionThatIsDueIsResumedAndSaysHowItStands() {
    Store.Glance waits = glance("w-1", 3, NOW.plus(Duration.ofMinutes(14)), null);
    Store.Glance over = glance("w-2", 3, NOW.minus(Duration.ofMinutes(1)), null);
    Store.Glance open = glance("o-3", 30, null, null);
    HomeLine.Lines lines = lines(List.of(waits, over, open));
    assertThat(lines.unfinished()).isEmpty();
    assertThat(HomeLine.Lines.drawn(lines.due()))
        .containsExactly(
            new HomeItem(
                "relief on practice-bass, begun 09:00", "w-2", "The wait is over: read again"),
            new HomeItem(
                "relief on practice-bass, begun 2027-03-02 06:00",
                "o-3",
                "Left with strings at pitch"),
            new HomeItem(
                "relief on practice-bass, begun 09:00", "w-1", "Waiting, 14 minutes to go"))
        .inOrder();
    assertThat(HomeLine.Lines.choice(lines.due(), 0)).isEqualTo(new LineHome.Choice.Resume("w-2"));
  }

  @Test
  void sessionsBeyondTheFiveAreListedAsUnfinished() {
    List<Store.Glance> sessions = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      sessions.add(glance("o-" + i, i + 1, null, null));
    }
    HomeLine.Lines lines = lines(sessions);
    assertThat(lines.due()).hasSize(5);
    assertThat(HomeLine.Lines.typed(lines.unfinished()).stream().map(LineHome.Item::name).toList())
        .containsExactly("o-5", "o-6")
        .inOrder();
  }
}
