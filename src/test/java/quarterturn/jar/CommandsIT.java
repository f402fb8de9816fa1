package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;
import quarterturn.session.store.Store;
import quarterturn.unit.Turn;

/** The command line: what it says, and its exit status. */
class CommandsIT {
  @TempDir Path folder;
  @TempDir Path elsewhere;
  private Bench bench = new Bench(Path.of("."), Instant.EPOCH);

  @BeforeEach
  void bench() {
    bench = new Bench(folder, Instant.now());
  }

  /** One line on standard error that says what is wrong, nothing on standard output, status 2. */
  private static void refused(JarProcess.Ran ran, String... says) {
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertWithMessage("one line").that(ran.err().lines().toList()).hasSize(1);
    assertThat(ran.err()).startsWith("quarterturn: ");
    for (String one : says) {
      assertThat(ran.err()).contains(one);
    }
  }

  @Test
  void wrongUsageIsOneClearLine() throws Exception {
    refused(bench.run("start", "relief", "--lines", "--kind", "banjo"), "there is no kind banjo");
    refused(bench.run("frobnicate"), "frobnicate");
    assertWithMessage("nothing is made for it").that(folder.toFile().list()).isEmpty();
  }

  @Test
  void aFolderThatCannotBeWrittenIsNamed() throws Exception {
    Path file = Files.createFile(folder.resolve("a-file"));
    refused(
        JarProcess.inside("", "start", "relief", "--lines", "--data", file.toString()), "a-file");
  }

  @Test
  void aBadProcedureIsNamedWithItsLine() throws Exception {
    Path file = Files.writeString(folder.resolve("bad.yaml"), "procedure: x\nrevision: many\n");
    JarProcess.Ran ran = bench.run("start", file.toString(), "--lines");
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("bad.yaml:2:11: ");
    assertThat(ran.err()).doesNotContain("\tat ");
  }

  @Test
  void helpAndVersion() throws Exception {
    JarProcess.Ran help = JarProcess.inside("", "--help");
    assertThat(help.status()).isEqualTo(0);
    assertThat(help.err()).isEmpty();
    assertThat(help.out()).contains("start");
    assertThat(help.out()).contains("Exit status:");
    JarProcess.Ran version = JarProcess.run("", "--version");
    assertThat(version.status()).isEqualTo(0);
    assertThat(version.out())
        .matches("quarterturn \\d+\\.\\d+\\.\\d+\\RJava .+, .+ .+ .+\\Rdata: .+\\Rsettings: .+\\R");
  }

  @Test
  void instrumentsAndSessionsAreListedAndShown() throws Exception {
    assertThat(bench.run("log", "list").status()).isEqualTo(0);
    JarProcess.Ran add =
        bench.run("instrument", "add", "my-bass", "--kind", "bass-34", "--style", "hard");
    assertThat(add.status()).isEqualTo(0);
    assertThat(add.out()).contains("Added my-bass.");
    refused(bench.run("instrument", "add", "my-bass", "--kind", "bass-34"), "already");
    assertThat(bench.run("instrument", "list").out()).contains("my-bass");
    JarProcess.Ran shown = bench.run("instrument", "show", "my-bass");
    assertThat(shown.status()).isEqualTo(0);
    assertThat(shown.out()).contains("hard");

    JarProcess.Ran begun = bench.run("start", "relief", "--lines", "--instrument", "my-bass");
    assertThat(begun.status()).isEqualTo(0);
    JarProcess.Ran list = bench.run("log", "list");
    assertThat(list.status()).isEqualTo(0);
    assertThat(list.out()).contains(bench.session());
    JarProcess.Ran log = bench.run("log", "show", bench.session());
    assertThat(log.status()).isEqualTo(0);
    assertThat(log.out()).contains("Began Neck relief as beginner.");
    assertThat(log.out()).contains("Name:      my-bass");
  }

  /** An invented session that turned the rod, and ended some hours ago. */
  private void turnedAndEnded(int hours) throws Exception {
    bench.run("instrument", "add", "my-bass", "--kind", "bass-34");
    Instant began = Instant.now().minus(Duration.ofHours(hours));
    Store.Created created =
        Store.at(folder).create("relief", 1, "d", LocalDate.of(2027, 3, 1), new Random(1));
    try (Journal journal = created.journal()) {
      journal.append(
          List.of(
              new Event.Started(
                  began,
                  "relief",
                  1,
                  "d",
                  Role.BEGINNER,
                  "my-bass",
                  "bass-34",
                  Style.MEDIUM,
                  null,
                  List.of(),
                  List.of(),
                  null,
                  null),
              new Event.Turned(began, "turn-rod", Turn.EIGHTH, Feel.SMOOTH),
              new Event.Ended(began, "done", false, "in-window", "It is in its window.")));
    }
  }

  @Test
  void whatIsDueIsListedAndWrittenAsACalendar() throws Exception {
    JarProcess.Ran nothing = bench.run("due", "--ics");
    assertThat(nothing.status()).isEqualTo(0);
    assertThat(nothing.out()).isEmpty();
    assertThat(nothing.err()).contains("nothing is still to come");
    turnedAndEnded(25);
    JarProcess.Ran table = bench.run("due");
    assertThat(table.status()).isEqualTo(0);
    assertThat(table.out())
        .containsMatch("(?m)^  java -jar .*start relief-check --instrument my-bass");
    assertThat(table.out()).contains("ago (");
    assertThat(bench.run("due", "--json").json().get(0).get("due")).hasSize(2);
    JarProcess.Ran calendar = bench.run("due", "--ics");
    assertThat(calendar.status()).isEqualTo(0);
    assertThat(calendar.out()).startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n");
    assertThat(calendar.out()).endsWith("END:VCALENDAR\r\n");
    Path file = elsewhere.resolve("due.ics");
    JarProcess.Ran written = bench.run("due", "--ics", file.toString());
    assertThat(written.status()).isEqualTo(0);
    assertThat(written.out()).isEmpty();
    assertThat(Files.readString(file)).isEqualTo(calendar.out());
    refused(bench.run("due", "--ics", file.toString()), "is there already", "--force");
    Files.writeString(file, "before");
    assertThat(bench.run("due", "--ics", file.toString(), "--force").status()).isEqualTo(0);
    assertThat(Files.readString(file)).isEqualTo(calendar.out());
    refused(bench.run("due", "--ics", "--force"), "--ics FILE");
    refused(bench.run("due", "--ics", elsewhere.resolve("none/due.ics").toString()), "none");
  }

  @Test
  void theHomeViewBeginsWhatIsDue() throws Exception {
    turnedAndEnded(25);
    JarProcess.Ran home = JarProcess.inside("1\nquit\n", "--data", folder.toString());
    assertThat(home.status()).isEqualTo(0);
    assertThat(home.out()).contains("Due:");
    assertThat(home.out()).contains("1. my-bass: A day after the rod was turned, read the relief");
    assertThat(bench.files()).hasSize(2);
    assertThat(bench.run("log", "list").out().lines().filter(l -> l.contains("my-bass")).count())
        .isEqualTo(2);
  }

  @Test
  void anInstrumentIsEnteredChangedAndLookedBackOn() throws Exception {
    String data = folder.toString();
    JarProcess.Ran add =
        JarProcess.inside(
            "bass-34\nmedium\ndone\n", "instrument", "add", "my-bass", "--data", data);
    assertThat(add.status()).isEqualTo(0);
    assertThat(add.err()).isEmpty();
    assertThat(add.out()).contains("Player [asked when work begins] > medium");
    assertThat(add.out()).contains("Added my-bass.");
    JarProcess.Ran cut =
        JarProcess.inside("kind\nbass-30\n", "instrument", "edit", "my-bass", "--data", data);
    assertThat(cut.status()).isEqualTo(2);
    assertThat(cut.err()).contains("the input ended before the questions did");
    JarProcess.Ran edit =
        bench.run("instrument", "edit", "my-bass", "--window-intonation", "-2..2", "--nut", "none");
    assertThat(edit.out()).isEqualTo("Changed my-bass: window-intonation.\n");
    assertThat(bench.run("instrument", "edit", "my-bass", "--nut", "none").out())
        .isEqualTo("Nothing was changed.\n");
    JarProcess.Ran shown = bench.run("instrument", "show", "my-bass");
    assertThat(shown.out()).contains("Kind:             Bass, 34 inch scale");
    assertThat(shown.out()).contains("Intonation range: -2 to 2 cents (its own)");

    bench.run("start", "relief", "--lines", "--instrument", "my-bass");
    JarProcess.Ran history = bench.run("instrument", "history", "my-bass");
    assertThat(history.status()).isEqualTo(0);
    assertThat(history.out()).contains(bench.session());
    assertThat(history.out()).contains("The rod was never turned");
    JarProcess.Ran json = bench.run("instrument", "history", "my-bass", "--json");
    assertThat(json.json().get(0).path("sessions")).hasSize(1);
    assertThat(json.json().get(0).path("known").path("answered").booleanValue()).isFalse();
  }

  @Test
  void aSessionThatNeverBeganIsNotInTheWayOfResuming() throws Exception {
    // What a kill leaves between the first line and the second.
    Store.at(folder)
        .create("relief", 1, "digest", LocalDate.of(2027, 3, 1), new Random(1))
        .journal()
        .close();
    String empty = bench.session();
    refused(bench.run("resume", "--lines"), "there is no unfinished session");
    refused(bench.run("resume", empty, "--lines"), "holds nothing yet");
    assertThat(bench.run("log", "list").status()).isEqualTo(0);
    bench.run("start", "relief", "--lines", "--kind", "bass-34");
    JarProcess.Ran resumed = bench.run("resume", "--lines");
    assertThat(resumed.status()).isEqualTo(0);
    assertThat(Bench.is(resumed.json().get(0), "welcome-back")).isTrue();
  }

  @Test
  void aLastLineCutShortIsToldOfAndTheRestIsKept() throws Exception {
    bench.run("start", "relief", "--lines", "--kind", "bass-34", "--style", "medium");
    Path file = bench.files().get(0);
    int events = bench.events().size();
    String text = Files.readString(file);
    Files.writeString(file, text + text.substring(0, 40));
    JarProcess.Ran resumed = bench.given("{\"answer\":\"none\"}\n", "resume", "--lines");
    assertThat(resumed.status()).isEqualTo(0);
    assertThat(resumed.json().get(0).toString()).contains("was cut short");
    assertThat(resumed.err()).contains("was cut short");
    assertThat(Bench.is(resumed.json().get(1), "welcome-back")).isTrue();
    assertThat(Files.readString(file)).startsWith(text);
    assertThat(bench.events()).hasSize(events + 2); // taken up, left
  }

  @Test
  void aDamagedSessionCanBeReadButNotGoneOnWith() throws Exception {
    bench.run("start", "relief", "--lines", "--kind", "bass-34", "--style", "medium");
    String session = bench.session();
    Path file = bench.files().get(0);
    Files.writeString(file, Files.readString(file).replace("rod not turned", "rod is turned!"));
    refused(bench.run("resume", session, "--lines"), "line 3", "agree with its sum");
    JarProcess.Ran log = bench.run("log", "show", session);
    assertThat(log.status()).isEqualTo(0);
    assertThat(log.out()).contains("Began Neck relief");
    assertThat(List.of(log.err().split("\n"))).hasSize(1);
  }
}
