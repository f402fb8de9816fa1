package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Limits;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Event;
import quarterturn.session.Question;
import quarterturn.session.listing.Glance;
import quarterturn.session.store.Dues;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;

class HomeItemsTest {
  private static final Limits.Rechecks RECHECKS = ShippedRules.LIMITS.rechecks();
  private static final Instant NOW = Instant.parse("2027-03-03T12:00:00Z");

  private static Glance glance(
      String name, int hoursAgo, @Nullable Instant until, Event.@Nullable Ended ended) {
    return glance(name, hoursAgo, until, ended, "strings at pitch");
  }

  private static Glance glance(
      String name,
      int hoursAgo,
      @Nullable Instant until,
      Event.@Nullable Ended ended,
      @Nullable String standing) {
    Instant began = NOW.minus(Duration.ofHours(hoursAgo));
    return new Glance(
        name,
        "relief",
        "practice-bass",
        "bass-34",
        began,
        began,
        ended,
        standing,
        until,
        null,
        false,
        ended == null ? null : began,
        began,
        null);
  }

  private static List<HomeDialogue.Item> items(List<Glance> sessions) {
    return HomeItems.of(
        Work.of(sessions, Map.of(), NOW),
        Dues.pressing(Dues.of(sessions, Set.of("practice-bass"), RECHECKS, NOW), RECHECKS, NOW),
        ShippedRules.ALL.results()::title,
        NOW,
        new Dates(ZoneOffset.UTC));
  }

  private static HomeDialogue.Item resumed(
      String name, String brief, String detail, boolean waits) {
    return new HomeDialogue.Item(
        new Question.Option(name, "Neck relief on practice-bass" + brief, detail, "To go on with"),
        new HomeDialogue.Choice.Resume(name),
        waits);
  }

  @Test
  void aReCheckBeginsTheShortCheckOnItsInstrument() {
    Instant end = NOW.minus(Duration.ofHours(26));
    Event.Ended ended = new Event.Ended(end, "done", false, "in-window", "It is in.");
    assertThat(items(List.of(glance("a-1", 27, null, ended))))
        .containsExactly(
            new HomeDialogue.Item(
                new Question.Option(
                    "practice-bass",
                    "practice-bass",
                    "A day after the rod was turned, read the relief again."
                        + " Due 2 hours ago (10:00)",
                    "Due"),
                new HomeDialogue.Choice.Begin("relief-check", "practice-bass", Role.BEGINNER)));
  }

  @Test
  void anUnfinishedSessionThatIsDueIsResumedAndSaysHowItStands() {
    Glance waits = glance("w-1", 3, NOW.plus(Duration.ofMinutes(13)).plusSeconds(20), null);
    Glance over = glance("w-2", 3, NOW.minus(Duration.ofMinutes(1)), null);
    Glance open = glance("o-3", 30, null, null);
    assertThat(items(List.of(waits, over, open)))
        .containsExactly(
            resumed("w-2", ": settled, ready", "Begun 09:00. Settled, ready", false),
            resumed("o-3", ": strings at pitch", "Begun 2027-03-02 06:00. Strings at pitch", false),
            resumed(
                "w-1",
                ": 14 minutes left",
                "Begun 09:00. Waits until 12:14, 14 minutes left",
                true))
        .inOrder();
  }

  @Test
  void whoseStateNobodyLeftWasBrokenOff() {
    assertThat(items(List.of(glance("o-3", 30, null, null, null))).get(0).option().detail())
        .endsWith(". Broken off");
  }

  @Test
  void whatIsDueSoonStandsApartFromWhatIsDue() {
    Instant end = NOW.minus(Duration.ofHours(23));
    Event.Ended ended = new Event.Ended(end, "done", false, "in-window", "It is in.");
    List<HomeDialogue.Item> items = items(List.of(glance("a-1", 24, null, ended)));
    assertThat(items.get(0).option().group()).isEqualTo("Due soon");
    assertThat(items.get(0).option().detail()).endsWith("Due in 1 hour (13:00)");
  }

  @Test
  void aDiscardedSessionIsNotListed() {
    Glance open = glance("o-3", 30, null, null);
    Glance gone =
        new Glance(
            "o-3",
            "relief",
            "practice-bass",
            "bass-34",
            open.started(),
            NOW,
            null,
            null,
            null,
            null,
            false,
            null,
            null,
            NOW);
    assertThat(items(List.of(open))).hasSize(1);
    assertThat(items(List.of(gone))).isEmpty();
  }

  @Test
  void everyUnfinishedSessionIsListedAndTheOneLeftLongestAgoIsFirst() {
    List<Glance> sessions = new ArrayList<>();
    for (int i = 6; i >= 0; i--) {
      sessions.add(glance("o-" + i, i + 1, null, null));
    }
    List<Question.Option> options =
        items(sessions).stream().map(HomeDialogue.Item::option).toList();
    assertThat(options.stream().map(Question.Option::name).toList())
        .containsExactly("o-6", "o-5", "o-4", "o-3", "o-2", "o-1", "o-0")
        .inOrder();
    assertThat(options.stream().map(Question.Option::group).distinct().toList())
        .containsExactly("To go on with");
  }
}
