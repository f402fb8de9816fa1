package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static quarterturn.command.Reworded.flat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.report.sheet.SheetFormat;
import quarterturn.session.Instrument;
import quarterturn.session.store.Store;

/**
 * What was on a disk of the first version reads, and lists and exports as the files beside it show;
 * -Dgolden.write=true writes these anew, to be read.
 */
@Tag("slow")
@Isolated
class SamplesTest {
  private static final Instant THEN = Instant.parse("2027-03-02T09:30:00Z");

  @TempDir Path folder;
  private SampleFolder samples = new SampleFolder(Path.of("unset"));

  @BeforeEach
  void copy() throws Exception {
    samples = SampleFolder.copied(folder);
  }

  private String run(String... args) {
    return run(THEN, "", args);
  }

  private static String run(Instant at, String in, String... args) {
    Captured ran = Captured.of(Clock.fixed(at, ZoneOffset.UTC), in, args);
    assertWithMessage(String.join(" ", args)).that(ran.status()).isEqualTo(0);
    return ran.out();
  }

  private String data() {
    return samples.in("data").toString();
  }

  private List<String> exports(String ending) throws IOException {
    try (Stream<Path> files = Files.list(samples.in("exports"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(ending))
          .sorted()
          .toList();
    }
  }

  private String export(String name) throws IOException {
    return samples.text("exports/" + name);
  }

  /** Holds what is printed now, with the folder left out, to a file of the samples. */
  private void same(String name, String now) throws IOException {
    Path file = SampleFolder.SAMPLES.resolve(name);
    String said = now.replace(data(), "DATA");
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(file, said);
    }
    assertWithMessage(name).that(flat(said)).isEqualTo(flat(Files.readString(file)));
  }

  private static void allOf(List<String> then, List<String> now, String name) {
    int at = 0;
    for (String line : now) {
      at += at < then.size() && line.equals(then.get(at)) ? 1 : 0;
    }
    assertWithMessage(name).that(then.subList(at, then.size())).isEmpty();
  }

  /** The lines of a class sheet without two of its sections. */
  private static List<String> toldOtherwise(String sheet) {
    List<String> kept = new ArrayList<>();
    boolean left = false;
    for (String line : sheet.lines().toList()) {
      boolean begins = line.contains("Predicted and read") || line.matches("\\W*(h2>)?Holds\\b.*");
      boolean ends = line.contains("Who did what") || line.matches("\\W*(h2>)?Stops\\b.*");
      left = begins || (left && !ends);
      if (!left) {
        kept.add(line);
      }
    }
    return kept;
  }

  /** Where a session's words come from. */
  private String kinds() {
    return samples.in("kinds").toString();
  }

  private String own(String session) {
    return samples.in(session.contains("house") ? "own" : "wordless").toString();
  }

  @Test
  void everySessionIsListedAndShownAsItWas() throws Exception {
    same("exports/log-list.txt", run("log", "list", "--data", data()));
    List<String> logs = exports(".log.txt");
    assertThat(logs).hasSize(12);
    for (String log : logs) {
      String session = log.replace(".log.txt", "");
      same("exports/" + log, run("log", "show", session, "--data", data(), "--own", own(session)));
    }
    assertThat(samples.store().sessions()).hasSize(12);
    assertThat(samples.store().sessions().stream().filter(Store.Glance::unfinished).count())
        .isEqualTo(6L);
  }

  @Test
  void everySheetIsTheSame() throws Exception {
    List<String> compared = new ArrayList<>();
    for (SheetFormat format : SheetFormat.values()) {
      String word = format.name().toLowerCase(Locale.ROOT);
      String ending = word.equals("text") ? "txt" : word.equals("markdown") ? "md" : word;
      for (String sheet : exports(".sheet." + ending)) {
        String session = sheet.replace(".sheet." + ending, "");
        String[] typed = {
          "log", "export", session, "--format", word, "--data", data(), "--own", own(session)
        };
        same("exports/" + sheet, run(typed));
        compared.add(sheet);
      }
    }
    assertThat(compared).hasSize(17);
  }

  @Test
  void instrumentsAndTheirHistoriesAreTheSame() throws Exception {
    same("exports/instrument-list.txt", run("instrument", "list", "--data", data()));
    for (String show : exports(".show.txt")) {
      String name = show.replace(".show.txt", "");
      String page = run("instrument", "show", name, "--data", data(), "--own", kinds());
      same("exports/" + show, page);
    }
    for (String history : exports(".history.txt")) {
      String name = history.replace(".history.txt", "");
      // How often the expected came true is said since, below all that was said then.
      String page = run("instrument", "history", name, "--data", data(), "--own", kinds());
      assertThat(flat(page)).startsWith(Reworded.now(flat(export(history))));
    }
    for (String history : exports(".history.json")) {
      String name = history.replace(".history.json", "");
      assertThat(run("instrument", "history", name, "--json", "--data", data()))
          .startsWith(export(history).replaceAll("}\\s*$", ","));
    }
    assertThat(exports(".history.txt")).hasSize(4);
  }

  @Test
  void anInstrumentWrittenAgainSaysTheSame() throws Exception {
    List<Instrument> instruments = samples.store().instruments().instruments();
    assertThat(instruments).hasSize(9);
    assertThat(samples.store().instruments().notices()).isEmpty();
    Store again = Store.at(folder.resolve("again"));
    for (Instrument instrument : instruments) {
      again.add(instrument);
    }
    assertThat(again.instruments().instruments()).isEqualTo(instruments);
  }

  @Test
  void aSessionIsDiscardedAfterOneQuestion() throws Exception {
    String session = "2027-03-01-relief-c15s";
    Instant then = Instant.parse("2027-03-03T10:30:00Z");
    String[] discard = {"log", "discard", session, "--data", data()};
    assertThat(run(then, "no\n", discard)).contains("in the middle of a rod turn");
    assertThat(run("log", "list", "--data", data())).doesNotContain("discarded:");
    assertThat(run(then, "yes\n", discard)).contains("Discarded: " + session);
    assertThat(run("log", "list", "--data", data()))
        .contains("discarded: in the middle of a rod turn, rod tightened 1/4 turn");
    assertThat(run("log", "show", session, "--data", data()))
        .contains("Discarded; its turns still count.");
    assertThat(run("due", "--data", data())).doesNotContain("resume " + session);
  }

  @Test
  void whatIsDueIsTheSame() throws Exception {
    same("exports/due.txt", run("due", "--data", data()));
    same("exports/due.json", run("due", "--json", "--data", data()));
    String calendar = run("due", "--ics", "--data", data()).replace("\r\n ", "");
    same("exports/due.ics", calendar);
  }

  @Test
  void theLessonOpensOnABoardAndItsSheetsAreTheSame() throws Exception {
    String lesson = samples.in("lesson").toString();
    Path out = folder.resolve("sheets");
    Instant then = Instant.parse("2027-03-03T10:30:00Z");
    run(then, "", "lesson", "sheets", lesson, "--out", out.toString());
    try (Stream<Path> files = Files.list(samples.in("lesson/sheets-board"))) {
      List<Path> sheets = files.toList();
      assertThat(sheets).hasSize(16);
      for (Path sheet : sheets) {
        String name = sheet.getFileName().toString();
        String now = Files.readString(out.resolve(name));
        if (name.startsWith("class.")) {
          // More is said of a class since; what was said then still is, in its order, but for the
          // readings by step, which the spreads by string tell, and holds, which are told together.
          allOf(toldOtherwise(Files.readString(sheet)), now.lines().toList(), name);
        } else {
          same("lesson/sheets-board/" + name, now);
        }
      }
    }
    String typed = "show\nshow left\nshow right\nspread\norders\nquit\n";
    same(
        "exports/lesson-board.txt",
        run(then, typed, "lesson", "board", lesson, "--plain", "--name", "looker"));
  }

  @Test
  void theFolderOfTheirOwnIsProven() {
    assertThat(run("check", "house-relief", "--own", samples.in("own").toString()))
        .contains("nothing found");
  }
}
