package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.session.journal.Journal;
import quarterturn.unit.Dates;
import quarterturn.unit.Turn;

/** When the clock is asked about before a session; the figures are those of safety/limits.yaml. */
class ClockDoubtTest {
  private static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");
  private static final Instant FUTURE = Instant.parse("2031-01-01T10:00:00Z");
  private static final Turn HALF = new Turn(0.5);

  private static Library relief;
  private static Library intake;

  @TempDir Path folder;
  private Store store = Store.at(Path.of("unset"));

  @BeforeAll
  static void prove() throws Exception {
    Sessions sessions = new Sessions(Store.at(Path.of("unset")), null, Clock.systemUTC());
    relief = sessions.library("relief");
    intake = sessions.library("intake");
  }

  @BeforeEach
  void open() throws IOException {
    store = Store.at(folder);
    for (String name : List.of("blue", "red")) {
      Instrument.Build unknown = Instrument.Build.UNKNOWN;
      store.add(new Instrument(name, "bass-34", Style.MEDIUM, null, null, NOON, unknown, Map.of()));
    }
  }

  private Sessions at(Instant now) {
    return new Sessions(store, null, Clock.fixed(now, ZoneOffset.UTC));
  }

  private static Sessions.Wish wish(String procedure, String instrument) {
    return new Sessions.Wish(procedure, instrument, "bass-34", Style.MEDIUM, Role.BEGINNER);
  }

  private static Sessions.Wish blue() {
    return wish("relief", "blue");
  }

  /** A session on record with half a turn. */
  private String turned(String instrument, Instant at) throws IOException {
    return recorded(instrument, at, 0.25, 0.25);
  }

  private String recorded(String instrument, Instant at, double... turns) throws IOException {
    List<Event> events = new ArrayList<>();
    events.add(
        new Event.Started(
            at,
            "relief",
            1,
            "d",
            Role.BEGINNER,
            instrument,
            "bass-34",
            Style.MEDIUM,
            null,
            List.of(),
            List.of(),
            null,
            Carried.NOTHING));
    for (double turn : turns) {
      events.add(new Event.Turned(at, "turn-rod", new Turn(turn), Feel.SMOOTH));
    }
    LocalDate day = LocalDate.ofInstant(at, ZoneOffset.UTC);
    Store.Created created = store.create("relief", 1, "d", day, new Random());
    try (Journal journal = created.journal()) {
      journal.append(events);
    }
    return created.name();
  }

  private OpeningDialogue asking(Instant now, Sessions.Wish wish) throws Exception {
    Library library = wish.procedure().equals("relief") ? relief : intake;
    return new OpeningDialogue(at(now).beginning(wish, library), new Dates(ZoneOffset.UTC));
  }

  private static String asked(OpeningDialogue dialogue) {
    Question.Choose asked = (Question.Choose) Objects.requireNonNull(dialogue.question());
    return String.join(" ", asked.lines()) + " " + asked.asks();
  }

  private Sessions.Opened opened(Instant now, OpeningDialogue dialogue, String... answers)
      throws IOException {
    for (String answer : answers) {
      assertThat(dialogue.question()).isNotNull();
      dialogue.take(answer);
    }
    assertThat(dialogue.question()).isNull();
    return at(now).open(dialogue.answered());
  }

  private Sessions.Opened resumed(Instant now, String session, String... answers) throws Exception {
    Beginning beginning = at(now).beginning(session, relief);
    return opened(now, new OpeningDialogue(beginning, new Dates(ZoneOffset.UTC)), answers);
  }

  private Turn today(Instant now, String... answers) throws Exception {
    try (Sessions.Opened opened = opened(now, asking(now, blue()), answers)) {
      return opened.bench().overview().today();
    }
  }

  @Test
  void aClockBehindTheLastRecordIsAskedAboutAndMayBeSetFirst() throws Exception {
    turned("red", NOON);
    OpeningDialogue dialogue = asking(Instant.parse("2015-01-01T00:05:00Z"), blue());
    assertThat(asked(dialogue))
        .isEqualTo(
            "The last record is of 2027-03-01 12:00. The clock says 2015-01-01 00:05, which is"
                + " earlier. One of them is wrong. Which is right?");
    dialogue.take("leave");
    assertThat(dialogue.left()).isTrue();
    assertThat(dialogue.question()).isNull();
    dialogue.back();
    dialogue.take("clock");
    assertThat(dialogue.question()).isNull();
    assertThat(dialogue.left()).isFalse();
  }

  @Test
  void minutesBetweenTwoMachinesAreNotAskedAboutAndNothingElseOfOrdinaryLifeIs() throws Exception {
    turned("blue", NOON);
    for (Duration later :
        List.of(Duration.ofMinutes(-9), Duration.ZERO, Duration.ofDays(30), Duration.ofDays(390))) {
      assertThat(asking(NOON.plus(later), blue()).question()).isNull();
    }
    // A procedure that turns no rod asks nothing.
    assertThat(asking(NOON.minus(Duration.ofDays(9)), wish("intake", "blue")).question()).isNull();
    // Years after a session that did not turn the rod, there is nothing that a leap could end.
    recorded("red", NOON.plus(Duration.ofDays(10)));
    assertThat(asking(NOON.plus(Duration.ofDays(3000)), wish("relief", "red")).question()).isNull();
  }

  @Test
  void aRecordOfTheFutureIsAskedAboutOnceAndCountsForADayNotForYears() throws Exception {
    turned("blue", FUTURE);
    assertThat(today(NOON, "clock")).isEqualTo(HALF);
    // In the next hours nothing is asked, and the half turn still counts; a day on it does not.
    assertThat(today(NOON.plus(Duration.ofHours(3)))).isEqualTo(HALF);
    assertThat(today(NOON.plus(Duration.ofHours(23)))).isEqualTo(HALF);
    assertThat(today(NOON.plus(Duration.ofHours(25)))).isEqualTo(Turn.NONE);
    Instant last = NOON.plus(Duration.ofHours(26));
    try (Sessions.Opened opened = opened(last, asking(last, blue()))) {
      assertThat(opened.bench().overview().net()).isEqualTo(HALF);
    }
  }

  @Test
  void aLeapOfYearsIsAskedAboutWhereItWouldFreeTheDay() throws Exception {
    Instant dead = Instant.parse("2015-01-01T00:10:00Z");
    turned("blue", dead);
    assertThat(asked(asking(NOON, blue())))
        .isEqualTo(
            "The last record is of 2015-01-01 00:10. The clock says 2027-03-01 12:00. A wait or a"
                + " day's turning would be over by now. Has so much time gone by?");
    assertThat(today(NOON, "not-passed")).isEqualTo(HALF);
    assertThat(today(NOON.plus(Duration.ofHours(2)))).isEqualTo(HALF);
    assertThat(today(NOON.plus(Duration.ofHours(25)))).isEqualTo(Turn.NONE);
  }

  @Test
  void timeThatWentByIsSaidOnceAndFreesTheDay() throws Exception {
    turned("blue", Instant.parse("2015-01-01T00:10:00Z"));
    assertThat(today(NOON, "passed")).isEqualTo(Turn.NONE);
    assertThat(today(NOON.plus(Duration.ofHours(2)))).isEqualTo(Turn.NONE);
  }

  @Test
  void whereOtherSessionsTellThatTheTimeWentByNothingIsAsked() throws Exception {
    turned("blue", NOON.minus(Duration.ofDays(900)));
    turned("red", NOON.minus(Duration.ofDays(600)));
    turned("red", NOON.minus(Duration.ofDays(250)));
    assertThat(asking(NOON, blue()).question()).isNull();
  }

  @Test
  void aSessionLeftInAWaitIsAskedAboutToo() throws Exception {
    String name = recorded("blue", NOON);
    try (Journal journal = store.open(name)) {
      journal.append(List.of(new Event.WaitBegan(NOON, "rest", NOON.plus(Duration.ofHours(24)))));
    }
    Instant later = NOON.plus(Duration.ofDays(5000));
    Beginning beginning = at(later).beginning(name, relief);
    OpeningDialogue dialogue = new OpeningDialogue(beginning, new Dates(ZoneOffset.UTC));
    assertThat(asked(dialogue)).contains("Has so much time gone by?");
    dialogue.take("not-passed");
    assertThat(dialogue.question()).isNull();
    Carried carried = dialogue.answered().opening().carried();
    assertThat(carried.doubts(later)).isTrue();
    assertThat(carried.spent()).isEqualTo(later);
  }

  @Test
  void aSessionOfTheFutureGoesOnAtTheRightTimeAndSoDoesTheOneAfterIt() throws Exception {
    String name;
    try (Sessions.Opened opened = opened(FUTURE, asking(FUTURE, blue()))) {
      name = opened.name();
      opened.bench().leave();
    }
    try (Sessions.Opened opened = resumed(NOON, name, "clock")) {
      assertThat(opened.bench().now()).isEqualTo(NOON);
      opened.bench().leave();
    }
    Instant next = NOON.plus(Duration.ofHours(1));
    try (Sessions.Opened opened = resumed(next, name)) {
      assertThat(opened.bench().now()).isEqualTo(next);
      assertThat(opened.bench().prompt()).isInstanceOf(Prompt.Tell.class);
    }
    // What was written since at the right time tells when a clock is behind again.
    assertThat(asked(asking(Instant.parse("2015-01-01T00:05:00Z"), wish("relief", "red"))))
        .contains("The last record is of 2027-03-01 13:00.");
    assertThat(at(next).discard(name)).isNotEmpty();
    List<Event> events = store.read(name).events();
    assertThat(events.get(events.size() - 1).at()).isEqualTo(next);
  }
}
