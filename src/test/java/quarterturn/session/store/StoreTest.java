package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.Limits;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.Neck;
import quarterturn.session.engine.Play;
import quarterturn.session.journal.Journal;
import quarterturn.session.listing.Glance;
import quarterturn.session.listing.Listing;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

class StoreTest {
  private static final Limits LIMITS = Play.relief().limits();

  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  @TempDir Path folder;
  private Store store = Store.at(Path.of("unset"));
  private final RandomGenerator random = new Random(7);

  @BeforeEach
  void openStore() {
    store = Store.at(folder.resolve("data"));
  }

  private String session(Event... events) throws IOException {
    Store.Created created = store.create("relief", 3, "d1", DAY, random);
    try (Journal journal = created.journal()) {
      journal.append(List.of(events));
    }
    return created.name();
  }

  private Glance only() throws IOException {
    List<Glance> all = store.sessions();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  @Test
  void anEmptyFolderHasNothingAndIsNotMade() throws IOException {
    assertThat(store.sessions()).isEmpty();
    assertThat(store.instruments().instruments()).isEmpty();
    assertThat(store.necks(LIMITS)).isEmpty();
    assertThat(Files.exists(folder.resolve("data"))).isFalse();
  }

  @Test
  void aSessionIsMadeAndOpenedAgain() throws IOException {
    String name = session(Samples.started(0, "practice-bass"));
    assertThat(Files.isRegularFile(folder.resolve("data/sessions/" + name + ".jsonl"))).isTrue();
    try (Journal journal = store.open(name.toUpperCase(java.util.Locale.ROOT))) {
      assertThat(journal.found().header()).isEqualTo(new Journal.Header(name, "relief", 3, "d1"));
      assertThrows(Journal.InUse.class, () -> store.open(name).close());
    }
    assertThat(store.read(name).events()).hasSize(1);
  }

  @Test
  void aNameThatIsTakenIsDrawnAgain() throws IOException {
    String one = store.create("relief", 3, "d1", DAY, new Random(5)).name();
    Store.Created two = store.create("relief", 3, "d1", DAY, new Random(5));
    two.journal().close();
    assertThat(two.name()).isNotEqualTo(one);
    assertThat(store.sessions()).hasSize(2);
  }

  @Test
  void whereEveryDrawIsTakenItGivesUp() throws IOException {
    RandomGenerator stuck = () -> 0L;
    store.create("relief", 3, "d1", DAY, stuck).journal().close();
    IOException e =
        assertThrows(IOException.class, () -> store.create("relief", 3, "d1", DAY, stuck));
    assertThat(e).hasMessageThat().contains("no free name");
  }

  @Test
  void namesDoNotLeadOutOfTheFolder() throws IOException {
    Files.writeString(folder.resolve("outside.jsonl"), "mine\n");
    assertThrows(NotUnderstoodException.class, () -> store.read("../../outside"));
    assertThrows(NotUnderstoodException.class, () -> store.open("../../outside").close());
    assertThrows(NotUnderstoodException.class, () -> store.instrument("../x"));
    IOException e = assertThrows(IOException.class, () -> store.read("ghost"));
    assertThat(e).hasMessageThat().contains("there is no session ghost");
  }

  @Test
  void theFolderIsTheUsersAlone() throws IOException {
    session();
    store.add(
        new Instrument(
            "b", "bass-34", null, null, null, Samples.at(0), Instrument.Build.UNKNOWN, Map.of()));
    if (!folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      return; // nothing to ask on this platform
    }
    for (String made : List.of("data", "data/sessions", "data/instruments")) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(made))))
          .isEqualTo("rwx------");
    }
  }

  @Test
  void theListingShowsHowASessionStands() throws IOException {
    String name =
        session(
            Samples.started(0, "practice-bass"),
            new Event.Told(Samples.at(1), "tools"),
            new Event.WaitBegan(Samples.at(2), "settle", Samples.at(17)),
            new Event.Left(Samples.at(3), "strings at pitch, neck settling"));
    assertThat(only())
        .isEqualTo(
            new Glance(
                name,
                "relief",
                "practice-bass",
                "bass-34",
                Samples.at(0),
                Samples.at(3),
                null,
                "strings at pitch, neck settling",
                Samples.at(17),
                null,
                false,
                null,
                null,
                null));
  }

  @Test
  void theListingShowsWhenTheRodMovedAndTheReliefWasRead() throws IOException {
    Event jammed = new Event.Turned(Samples.at(5), "turn", Turn.NONE, Feel.JAMMED);
    String name =
        session(
            Samples.started(0, "b"),
            Samples.relief(1, Which.LOWEST, 0.5, 0.55),
            Samples.turned(3, Turn.EIGHTH),
            Samples.unmeasured(4),
            jammed);
    assertThat(only().turned()).isEqualTo(Samples.at(3));
    assertThat(only().relief()).isEqualTo(Samples.at(1));
    try (Journal journal = store.open(name)) {
      journal.append(
          List.of(
              new Event.Recalled(Samples.at(6), "turn", Turn.SIXTEENTH.opposite(), false, null)));
      journal.append(List.of(Samples.relief(7, Which.HIGHEST, 0.4, 0.45)));
      assertThat(only().turned()).isEqualTo(Samples.at(6));
      assertThat(only().relief()).isEqualTo(Samples.at(7));
      journal.append(List.of(new Event.Corrected(Samples.at(8), "measure-relief")));
      assertThat(only().relief()).isEqualTo(Samples.at(1));
    }
  }

  @Test
  void instrumentsAreNamedThoughAFileIsDamaged() throws IOException {
    assertThat(store.instrumentNames()).isEmpty();
    store.add(
        new Instrument(
            "practice-bass",
            "bass-34",
            null,
            null,
            null,
            Samples.at(0),
            Instrument.Build.UNKNOWN,
            Map.of()));
    Files.writeString(folder.resolve("data/instruments/broken.yaml"), "{{{");
    Files.writeString(folder.resolve("data/instruments/.lock"), "");
    assertThat(store.instrumentNames()).containsExactly("practice-bass", "broken");
  }

  @Test
  void aWaitThatIsOverOrWithdrawnIsNotShown() throws IOException {
    Event began = new Event.WaitBegan(Samples.at(2), "settle", Samples.at(17));
    Event waited = new Event.Waited(Samples.at(17), "settle", null);
    String name = session(Samples.started(0, "b"), new Event.Told(Samples.at(1), "tune"), began);
    assertThat(only().waitingUntil()).isEqualTo(Samples.at(17));
    try (Journal journal = store.open(name)) {
      journal.append(List.of(waited));
      assertThat(only().waitingUntil()).isNull();
      journal.append(List.of(new Event.Corrected(Samples.at(18), "settle")));
      assertThat(only().waitingUntil()).isEqualTo(Samples.at(17));
      journal.append(List.of(new Event.Corrected(Samples.at(18), "tune")));
      assertThat(only().waitingUntil()).isNull();
      journal.append(List.of(began));
      Event.Ended ended = new Event.Ended(Samples.at(20), "stop", true, "no-answer", "Stopped.");
      journal.append(List.of(ended));
      assertThat(only().waitingUntil()).isNull();
      assertThat(only().ended())
          .isEqualTo(new Event.Ended(Samples.at(20), "", true, "no-answer", ""));
    }
  }

  @Test
  void theNewestStandsFirstAndTheUnreadableApart() throws IOException {
    String old = session(Samples.started(0, "b"));
    String newest = session(Samples.started(500, "b"));
    String middle = session(Samples.started(100, "b"));
    Path sessions = folder.resolve("data/sessions");
    Files.writeString(sessions.resolve("alien.jsonl"), "{\"a\":1}\n");
    Files.writeString(sessions.resolve("notes.txt"), "mine\n");
    Files.createDirectory(sessions.resolve("folder.jsonl"));
    Listing all = store.listing();
    assertThat(all.sessions().stream().map(Glance::name).toList())
        .containsExactly(newest, middle, old)
        .inOrder();
    assertThat(all.notRead())
        .containsExactly(
            "not read: alien.jsonl, line 1 of alien.jsonl: the file does not begin like a session of"
                + " quarterturn. Nothing in it can be used.",
            "not read: folder.jsonl, it is a folder",
            "not read: notes.txt, it is no session")
        .inOrder();
    assertThat(all.sessions().get(0).notice()).isNull();
  }

  @Test
  void damageIsANoticeAndNotAnError() throws IOException {
    String name = session(Samples.started(0, "practice-bass"));
    Path file = folder.resolve("data/sessions/" + name + ".jsonl");
    Files.writeString(file, "{\"n\":2,", StandardOpenOption.APPEND);
    assertThat(only().damaged()).isFalse();
    assertThat(only().notice()).contains("cut short");
    Files.writeString(file, "}\n", StandardOpenOption.APPEND);
    assertThat(only().damaged()).isTrue();
    assertThat(only().notice()).contains("line 3 of " + name);
    assertThat(only().instrument()).isEqualTo("practice-bass");
  }

  @Test
  void aFileFarTooLargeIsNotReadIn() throws IOException {
    session(Samples.started(0, "b"));
    Path huge = folder.resolve("data/sessions/huge.jsonl");
    try (var channel =
        Files.newByteChannel(huge, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      channel.position(1L << 24).write(java.nio.ByteBuffer.wrap(new byte[1]));
    }
    assertThat(store.listing().notRead())
        .containsExactly(
            "not read: huge.jsonl, it can't be read: huge.jsonl is far too large to be one of ours,"
                + " and was not read");
  }

  @Test
  void pastTurnsComeFromEverySessionOfTheInstrumentOldestFirst() throws IOException {
    session(Samples.started(500, "practice-bass"), Samples.turned(510, Turn.SIXTEENTH));
    session(Samples.started(0, "practice-bass"), Samples.turned(10, Turn.EIGHTH));
    session(Samples.started(100, "other"), Samples.turned(110, Turn.QUARTER));
    Files.writeString(folder.resolve("data/sessions/alien.jsonl"), "{\"a\":1}\n");
    assertThat(neckOf("practice-bass").turns())
        .containsExactly(
            new Event.Past(Samples.at(10), Turn.EIGHTH, null, null),
            new Event.Past(Samples.at(510), Turn.SIXTEENTH, null, null))
        .inOrder();
  }

  private Neck neckOf(String instrument) throws IOException {
    return store.necks(LIMITS).stream()
        .filter(neck -> instrument.equals(neck.instrument()))
        .findFirst()
        .orElseThrow();
  }
}
