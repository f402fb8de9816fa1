package quarterturn.session.listing;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.condition.Feel;
import quarterturn.report.ReadingHistory;
import quarterturn.session.Event;
import quarterturn.session.store.InstrumentPast;
import quarterturn.session.store.Samples;
import quarterturn.session.store.Store;
import quarterturn.unit.Turn;

/** What is remembered of the sessions' folder says what the sessions say, whatever befalls it. */
class SessionIndexTest {
  private static final int MANY = 12;

  @TempDir Path data;

  @BeforeEach
  void manySessions() throws IOException {
    for (int i = 0; i < MANY; i++) {
      session(i, Samples.turned(i * 100 + 5, Turn.EIGHTH));
    }
  }

  private String session(int n, Event... more) throws IOException {
    Store.Created made =
        Store.at(data).create("relief", 3, "d1", LocalDate.of(2027, 3, 1), new Random(n));
    try (var journal = made.journal()) {
      journal.append(List.of(Samples.started(n * 100, "bass-" + n % 3)));
      journal.append(List.of(more));
    }
    return made.name();
  }

  private InstrumentPast past(String instrument) throws IOException {
    return Store.at(data).past(instrument, ShippedRules.LIMITS, Clock.systemUTC());
  }

  private Path index() {
    return data.resolve("sessions/.index");
  }

  private Path anyFile() throws IOException {
    return data.resolve("sessions").resolve(Store.at(data).sessions().get(0).name() + ".jsonl");
  }

  /** What a folder without an index lists is the measure. */
  private void assertListsAsWithoutIt(String when) throws IOException {
    Listing with = Store.at(data).listing();
    Files.deleteIfExists(index());
    assertWithMessage(when).that(with).isEqualTo(Store.at(data).listing());
    assertWithMessage("it is written anew").that(Files.exists(index())).isTrue();
  }

  @Test
  void everyEventOfEveryKindIsListedAlikeTheSecondTime() throws IOException {
    session(77, Samples.everyKind().toArray(new Event[0]));
    Store.at(data).listing();
    assertListsAsWithoutIt("read from the index");
  }

  @Test
  void aFileThatChangedIsReadAgain() throws IOException {
    Path file = anyFile();
    Files.writeString(file, "{\"n\":3,", StandardOpenOption.APPEND);
    assertThat(Store.at(data).sessions().get(0).notice()).contains("cut short");
    assertListsAsWithoutIt("a line that was cut short");
    byte[] bytes = Files.readAllBytes(file);
    bytes[bytes.length - 60] ^= 1;
    FileTime before = Files.getLastModifiedTime(file);
    Files.write(file, bytes);
    Files.setLastModifiedTime(file, FileTime.from(before.toInstant().plusSeconds(1)));
    assertThat(Store.at(data).sessions().get(0).damaged()).isTrue();
    assertListsAsWithoutIt("a changed byte");
    Files.delete(file);
    assertThat(Store.at(data).sessions()).hasSize(MANY - 1);
  }

  @Test
  void anIndexThatIsMissingOrWrongIsWrittenAnewWithoutAWord() throws IOException {
    Listing right = Store.at(data).listing();
    byte[] good = Files.readAllBytes(index());
    Random random = new Random(1);
    for (int i = 0; i < 16; i++) {
      byte[] bad = good.clone();
      bad[random.nextInt(bad.length)] ^= (byte) (1 << random.nextInt(8));
      Files.write(index(), i % 2 == 0 ? bad : Arrays.copyOf(good, random.nextInt(good.length)));
      assertThat(Store.at(data).listing()).isEqualTo(right);
    }
    Files.writeString(index(), "quarterturn index 3 0\n");
    assertThat(Store.at(data).listing()).isEqualTo(right);
    Files.delete(index());
    Files.createDirectory(index());
    assertWithMessage("a folder in its place").that(Store.at(data).listing()).isEqualTo(right);
  }

  /** Forged with a sum that holds: the record itself says how far the rod was turned. */
  @Test
  void aForgedIndexFreesNoTurn() throws Exception {
    Store.at(data).listing();
    String text = Files.readString(index(), StandardCharsets.UTF_8);
    String body = text.substring(text.indexOf('\n') + 1).replace("\t0.125\t", "\t0.0\t");
    new DerivedFile(index(), "quarterturn index 3").write(body);
    assertThat(Store.at(data).sessions().get(0).rod().net()).isEqualTo(Turn.NONE);
    double net =
        past("bass-1").neck().turns().stream().mapToDouble(past -> past.turn().turns()).sum();
    assertThat(net).isEqualTo(4 * 0.125);
  }

  @Test
  void whatIsNoSessionIsToldOnceAndStopsNothing() throws IOException {
    Path sessions = data.resolve("sessions");
    String one = Store.at(data).sessions().get(0).name();
    Path file = sessions.resolve(one + ".jsonl");
    Files.copy(file, sessions.resolve(one + " (copy).jsonl"));
    Files.copy(file, sessions.resolve(one + "-2.jsonl"));
    Files.copy(file, sessions.resolve("backup.bak"));
    Files.copy(file, sessions.resolve("." + one + ".jsonl.swap"));
    Files.writeString(sessions.resolve(".hidden"), "a sync tool's own");
    Files.writeString(sessions.resolve("empty.jsonl"), "");
    Files.writeString(sessions.resolve("a\tb\nc.txt"), "x");
    Files.createDirectory(sessions.resolve("folder"));
    Files.createSymbolicLink(sessions.resolve("link.jsonl"), file);
    Files.createSymbolicLink(sessions.resolve("nowhere.jsonl"), sessions.resolve("gone"));
    String copy = ", a copy of session " + one + "; its turns count";
    for (int time = 0; time < 2; time++) {
      Listing listing = Store.at(data).listing();
      assertThat(listing.sessions()).hasSize(MANY);
      assertThat(listing.notRead())
          .containsExactly(
              "not read: ." + one + ".jsonl.swap" + copy,
              "not read: " + one + " (copy).jsonl" + copy,
              "not read: " + one + "-2.jsonl" + copy,
              "not read: a\uFFFDb\uFFFDc.txt, it is no session",
              "not read: backup.bak" + copy,
              "not read: empty.jsonl, it is empty",
              "not read: folder, it is a folder",
              "not read: link.jsonl, a link to session " + one + "; its turns count",
              "not read: nowhere.jsonl, it is a link that leads nowhere");
    }
    Files.delete(file);
    Listing listing = Store.at(data).listing();
    assertWithMessage("the copy whose name is a session's takes its place")
        .that(listing.sessions().stream().map(Glance::name).toList())
        .contains(one + "-2");
    assertThat(listing.notRead())
        .contains(
            "not read: "
                + one
                + " (copy).jsonl, it begins as session "
                + one
                + ", which is not here: name it "
                + one
                + ".jsonl; its turns count");
  }

  @Test
  void ofAHistoryOnlyWhatChangedIsReadAgain() throws IOException {
    for (int i = 0; i < 3 * MANY; i += 3) {
      session(100 + 3 * i, Samples.everyKind().get(7), Samples.turned(5, Turn.SIXTEENTH));
    }
    Store store = Store.at(data);
    var first = past("bass-1").sessions();
    assertThat(Files.exists(data.resolve("sessions/.index-bass-1"))).isTrue();
    assertThat(ReadingHistory.of("bass-1", past("bass-1").sessions(), List.of()))
        .isEqualTo(ReadingHistory.of("bass-1", first, List.of()));
    String name = first.keySet().iterator().next();
    try (var journal = store.open(name)) {
      Instant at = Samples.at(100_000);
      journal.append(List.of(new Event.Turned(at, "turn", Turn.SIXTEENTH, Feel.SMOOTH)));
    }
    int before = Objects.requireNonNull(first.get(name)).events().size();
    SessionReadings after = Objects.requireNonNull(past("bass-1").sessions().get(name));
    assertThat(after.events()).hasSize(before + 1);
  }
}
