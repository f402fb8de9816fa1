package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
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
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.command.OrdinaryAnswers;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Bench;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.session.journal.Journal;
import quarterturn.unit.Bracket;
import quarterturn.unit.Dates;
import quarterturn.unit.Turn;

/** What the records of other sessions mean for one that begins; limits are those of safety/. */
class OtherRecordsTest {
  private static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");
  private static final Turn HALF = new Turn(0.5);
  private static final Sessions.Wish UNNAMED = wish(null);
  private static final Sessions.Wish BLUE = wish("blue");

  @TempDir Path folder;
  private Store store = Store.at(Path.of("unset"));
  private Sessions sessions = new Sessions(store, null, Clock.systemUTC());

  @BeforeEach
  void open() throws IOException {
    store = Store.at(folder);
    sessions = new Sessions(store, null, Clock.fixed(NOON, ZoneOffset.UTC));
    for (String name : List.of("blue", "red")) {
      Instrument.Build unknown = Instrument.Build.UNKNOWN;
      store.add(new Instrument(name, "bass-34", Style.MEDIUM, null, null, NOON, unknown, Map.of()));
    }
  }

  private static Sessions.Wish wish(@Nullable String instrument) {
    return new Sessions.Wish("relief", instrument, "bass-34", Style.MEDIUM, Role.BEGINNER);
  }

  /** A session on record that was left after these turns, hours before noon. */
  private String turned(@Nullable String instrument, long hours, double... turns)
      throws IOException {
    Instant at = NOON.minus(Duration.ofHours(hours));
    List<Event> more = new ArrayList<>();
    for (double turn : turns) {
      more.add(new Event.Turned(at, "turn-rod", new Turn(turn), Feel.SMOOTH));
    }
    return recorded(instrument, at, more);
  }

  private String recorded(@Nullable String instrument, Instant at, List<Event> more)
      throws IOException {
    Event.Started started =
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
            Carried.NOTHING);
    LocalDate day = LocalDate.ofInstant(at, ZoneOffset.UTC);
    Store.Created created = store.create("relief", 1, "d", day, new Random());
    try (Journal journal = created.journal()) {
      journal.append(List.of(started));
      journal.append(more);
    }
    Path file = file(created.name());
    Files.setLastModifiedTime(file, FileTime.from(at));
    return created.name();
  }

  private Path file(String session) {
    return folder.resolve("sessions/" + session + ".jsonl");
  }

  /** How the day and the rod stand at the beginning. */
  private void expect(Sessions.Opened opened, Turn today, Turn net) {
    assertThat(opened.bench().overview().today()).isEqualTo(today);
    assertThat(opened.bench().overview().net()).isEqualTo(net);
  }

  private static Turn asked(Bench bench) throws Exception {
    Prompt prompt = toTurn(bench);
    assertThat(prompt).isInstanceOf(Prompt.TurnRod.class);
    return ((Prompt.TurnRod) prompt).turn();
  }

  /** The prompt for a turn, the daily rest or the end, whichever comes first. */
  private static Prompt toTurn(Bench bench) throws Exception {
    while (!(bench.prompt() instanceof Prompt.TurnRod)
        && !(bench.prompt() instanceof Prompt.Wait wait && wait.rest())
        && !bench.prompt().ended()) {
      bench.answer(OrdinaryAnswers.to(bench, new Bracket(1.2, 1.25)));
    }
    return bench.prompt();
  }

  @Test
  void halfATurnInASessionWithoutANameCountsInTheNext() throws Exception {
    turned(null, 1, 0.25, 0.25);
    try (Sessions.Opened opened = sessions.start(UNNAMED)) {
      expect(opened, HALF, Turn.NONE);
      assertThat(toTurn(opened.bench())).isInstanceOf(Prompt.Wait.class);
    }
    try (Sessions.Opened opened = sessions.start(BLUE)) {
      assertThat(toTurn(opened.bench())).isInstanceOf(Prompt.Wait.class);
    }
  }

  @Test
  void whatIsSaidToBeAnotherInstrumentCountsNoMoreAndIsAskedOnce() throws Exception {
    turned(null, 1, 0.25, 0.25);
    try (Sessions.Opened opened = Openings.start(sessions, BLUE, "another")) {
      expect(opened, Turn.NONE, Turn.NONE);
    }
    Openings.start(sessions, BLUE).close();
  }

  @Test
  void whatIsSaidToBeTheSameIsItsOwnFromThenOn() throws Exception {
    String one = turned(null, 30, 0.25, 0.25);
    try (Sessions.Opened opened = Openings.start(sessions, BLUE, one)) {
      expect(opened, Turn.NONE, HALF);
    }
    try (Sessions.Opened opened = Openings.start(sessions, BLUE)) {
      expect(opened, Turn.NONE, HALF);
    }
  }

  @Test
  void aSessionWithoutANameThatIsOfANamedInstrumentTakesItsName() throws Exception {
    turned("blue", 1, 0.25);
    turned("red", 1, 0.125);
    try (Sessions.Opened opened = Openings.start(sessions, UNNAMED, "blue")) {
      expect(opened, Turn.QUARTER, Turn.QUARTER);
      assertThat(opened.bench().overview().instrument()).isEqualTo("blue");
    }
  }

  @Test
  void twoSessionsWithoutANameAreNotOpenAtOnce() throws Exception {
    try (Sessions.Opened opened = sessions.start(UNNAMED)) {
      IOException refused = assertThrows(IOException.class, () -> sessions.start(UNNAMED));
      assertThat(refused).hasMessageThat().contains("--instrument NAME");
      sessions.start(BLUE).close();
      assertThat(opened.bench().prompt().ended()).isFalse();
    }
    sessions.start(UNNAMED).close();
  }

  @Test
  void anotherKindOrAnotherNameIsAnotherInstrument() throws Exception {
    turned("red", 1, 0.25, 0.25);
    try (Sessions.Opened opened = Openings.start(sessions, BLUE)) {
      expect(opened, Turn.NONE, Turn.NONE);
    }
    turned(null, 1, 0.25);
    Sessions.Wish guitar =
        new Sessions.Wish("relief", null, "electric-25", Style.MEDIUM, Role.BEGINNER);
    Openings.start(sessions, guitar).close();
  }

  @Test
  void aFullTurnFromAsFoundHoldsOverAllSessions() throws Exception {
    turned("blue", 80, 0.25, 0.25);
    turned("blue", 50, 0.25, 0.25);
    try (Sessions.Opened opened = sessions.start(BLUE)) {
      expect(opened, Turn.NONE, new Turn(1));
      assertThat(toTurn(opened.bench())).isInstanceOf(Prompt.HandOver.class);
    }
    try (Sessions.Opened opened = Openings.start(sessions, BLUE, "new-start", "a new neck")) {
      expect(opened, Turn.NONE, Turn.NONE);
      assertThat(asked(opened.bench())).isEqualTo(Turn.EIGHTH);
    }
  }

  @Test
  void aSignToStopHoldsUntilAFindingIsOnRecord() throws Exception {
    Instant at = NOON.minus(Duration.ofDays(40));
    recorded("blue", at, List.of(new Event.Turned(at, "turn-rod", Turn.NONE, Feel.JAMMED)));
    try (Sessions.Opened opened = Openings.start(sessions, BLUE, "not-yet")) {
      Prompt.HandOver end = (Prompt.HandOver) toTurn(opened.bench());
      assertThat(end.outcome()).isEqualTo("jammed");
      assertThat(end.said().text()).contains("until a qualified repairer's finding is on record");
    }
    try (Sessions.Opened opened =
        Openings.start(sessions, BLUE, "finding", "nut freed and greased")) {
      assertThat(asked(opened.bench())).isEqualTo(Turn.EIGHTH);
    }
    Openings.start(sessions, BLUE).close();
  }

  @Test
  void nothingIsBegunOnACrackedNeckBeforeAFindingIsOnRecord() throws Exception {
    Instant at = NOON.minus(Duration.ofDays(40));
    Event crack = new Event.Ended(at, "damaged", true, "damage", "A crack.");
    String name = recorded("blue", at, List.of(crack));
    for (String procedure : List.of("relief", "relief-check")) {
      Sessions.Wish wish = new Sessions.Wish(procedure, "blue", null, null, Role.BEGINNER);
      OpeningDialogue opening =
          new OpeningDialogue(sessions.beginning(wish), new Dates(ZoneOffset.UTC));
      Question.Choose asked = (Question.Choose) Objects.requireNonNull(opening.question());
      assertThat(asked.lines()).contains("2027-01-20 12:00, " + name + ": A crack.");
      assertThat(asked.options().stream().map(Question.Option::name).toList())
          .containsExactly("leave", "finding")
          .inOrder();
      opening.take("leave");
      assertThat(opening.question()).isNull();
      assertThat(opening.left()).isTrue();
    }
    // Whatever begins all the same turns nothing.
    try (Sessions.Opened opened = Openings.start(sessions, BLUE, "leave")) {
      assertThat(((Prompt.HandOver) toTurn(opened.bench())).outcome()).isEqualTo("damage");
    }
    try (Sessions.Opened opened = Openings.start(sessions, BLUE, "finding", "glued")) {
      assertThat(asked(opened.bench())).isEqualTo(Turn.EIGHTH);
    }
  }

  @Test
  void aStopThatWasOfAnotherInstrumentIsForgottenOnceThatIsSaid() throws Exception {
    Instant at = NOON.minus(Duration.ofDays(1));
    recorded(null, at, List.of(new Event.Turned(at, "turn-rod", Turn.NONE, Feel.JAMMED)));
    try (Sessions.Opened opened = Openings.start(sessions, BLUE, "not-sure", "not-yet")) {
      assertThat(toTurn(opened.bench())).isInstanceOf(Prompt.HandOver.class);
    }
    try (Sessions.Opened opened = Openings.start(sessions, BLUE, "another")) {
      assertThat(asked(opened.bench())).isEqualTo(Turn.EIGHTH);
    }
  }

  @Test
  void twoSessionsWithAMoveWithoutAnAnswerEachAreTwoMoves() throws Exception {
    for (long days : List.of(5, 3)) {
      Instant at = NOON.minus(Duration.ofDays(days));
      List<Event> turn =
          List.of(
              read(at),
              new Event.Turned(at, "turn-rod", Turn.EIGHTH, Feel.SMOOTH),
              read(at.plusSeconds(900)));
      recorded("blue", at, turn);
    }
    try (Sessions.Opened opened = sessions.start(BLUE)) {
      assertThat(((Prompt.HandOver) toTurn(opened.bench())).outcome()).isEqualTo("no-response");
    }
  }

  private static Event.Read read(Instant at) {
    return new Event.Read(
        at,
        "found-low",
        quarterturn.procedure.kind.Quantity.RELIEF,
        quarterturn.procedure.kind.Which.LOWEST,
        "E1",
        List.of(1, 17),
        8,
        0.05,
        new Bracket(1.2, 1.25),
        null);
  }

  @Test
  void aDamagedRecordIsNotAnEmptyOne() throws Exception {
    String one = turned("blue", 2, 0.25);
    damage(one);
    try (Sessions.Opened opened = sessions.start(BLUE)) {
      expect(opened, HALF, Turn.NONE);
      assertThat(((Prompt.Wait) toTurn(opened.bench())).rest()).isTrue();
    }
    try (Sessions.Opened opened = Openings.start(sessions, BLUE, "turned", "tighten 1/8")) {
      expect(opened, Turn.EIGHTH, Turn.EIGHTH);
    }
    // It was said, so it is not asked again.
    try (Sessions.Opened opened = Openings.start(sessions, BLUE)) {
      expect(opened, Turn.EIGHTH, Turn.EIGHTH);
    }
  }

  @Test
  void aSessionWhoseOwnEndIsCutDoesNotForgetThatWhenItGoesOn() throws Exception {
    String name;
    try (Sessions.Opened opened = sessions.start(BLUE)) {
      name = opened.name();
    }
    Files.writeString(file(name), Files.readString(file(name)) + "{\"n\":2,");
    Files.setLastModifiedTime(file(name), FileTime.from(NOON));
    try (Sessions.Opened opened = Openings.resume(sessions, name, "not-sure", "not-yet")) {
      expect(opened, HALF, Turn.NONE);
    }
    // The file is mended now, and nobody knows any more than before.
    try (Sessions.Opened opened = Openings.start(sessions, BLUE, "not-sure", "not-yet")) {
      expect(opened, HALF, Turn.NONE);
    }
    Openings.start(sessions, BLUE, "none").close();
    Openings.start(sessions, BLUE).close();
  }

  /** The line of the turn is spoiled; the start before it can be read. */
  private void damage(String session) throws IOException {
    FileTime at = Files.getLastModifiedTime(file(session));
    Files.writeString(
        file(session), Files.readString(file(session)).replace("\"turned\"", "\"tuned!\""));
    Files.setLastModifiedTime(file(session), at);
  }

  @Test
  void aFileThatTellsNothingMayBeOfAnyInstrument() throws Exception {
    Files.createDirectories(folder.resolve("sessions"));
    Path garbage = file("2027-02-28-relief-k3f9");
    Files.write(garbage, new byte[] {1, 2, 3});
    Files.setLastModifiedTime(garbage, FileTime.from(NOON.minusSeconds(3600)));
    try (Sessions.Opened opened = sessions.start(UNNAMED)) {
      expect(opened, HALF, Turn.NONE);
    }
    Openings.start(sessions, UNNAMED, "none").close();
    Openings.start(sessions, BLUE, "another").close();
    try (Sessions.Opened opened = Openings.start(sessions, BLUE)) {
      expect(opened, Turn.NONE, Turn.NONE);
    }
    // Later the day is over, but where the rod stands is as unknown as before.
    Files.setLastModifiedTime(garbage, FileTime.from(NOON.minus(Duration.ofDays(3))));
    Files.move(garbage, file("2027-02-20-relief-k3f9"));
    try (Sessions.Opened opened = Openings.start(sessions, UNNAMED, "not-sure", "not-yet")) {
      expect(opened, Turn.NONE, Turn.NONE);
      assertThat(toTurn(opened.bench())).isInstanceOf(Prompt.HandOver.class);
    }
  }

  @Test
  void aLinkToNowhereAndAFolderAreNoEmptyRecords() throws Exception {
    Files.createDirectories(file("2027-03-01-relief-aaaa"));
    Files.createSymbolicLink(file("2027-03-01-relief-bbbb"), folder.resolve("nowhere"));
    Beginning beginning = sessions.beginning(BLUE);
    assertThat(beginning.opening().unreadOpen()).hasSize(2);
    Openings.start(sessions, BLUE, "none", "not-sure", "not-yet").close();
  }

  @Test
  void aCopyCountsItsTurnsOnceAndTheRestOfBoth() throws Exception {
    String one = turned("blue", 3, 0.125);
    Path copy = folder.resolve("sessions/" + one + " (other copy).jsonl");
    Files.copy(file(one), copy);
    try (Sessions.Opened opened = sessions.start(BLUE)) {
      expect(opened, Turn.EIGHTH, Turn.EIGHTH);
    }
    Files.delete(file(one));
    Files.move(copy, folder.resolve("sessions/" + one + ".jsonl.bak"));
    try (Sessions.Opened opened = sessions.start(BLUE)) {
      expect(opened, Turn.EIGHTH, Turn.EIGHTH);
    }
  }

  @Test
  void whatALaterSessionRemembersOfALostOneCounts() throws Exception {
    String one = turned("blue", 3, 0.125);
    sessions.start(BLUE).close();
    Files.delete(file(one));
    try (Sessions.Opened opened = sessions.start(BLUE)) {
      expect(opened, Turn.EIGHTH, Turn.EIGHTH);
    }
  }
}
