package quarterturn.report.lesson;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterturn.lesson.Direction;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Order;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Value;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.teacher.DeskView;
import quarterturn.lesson.teacher.DeskWords;
import quarterturn.procedure.read.Shelf;
import quarterturn.report.Told;
import quarterturn.report.sheet.SheetFormatsTest;

/** The sheets of an invented lesson; the files are to be read in review. */
class LessonSheetsTest {
  private static final List<String> NAMES =
      List.of("class", "01-ana", "02-ben", "03-cleo", "04-dov", "05-eda", "06-fin");
  private static final String EVIL = "=1+1<script>alert(1)</script>|x";

  private static final StepTitles TITLES =
      new StepTitles(Map.of("relief/read", "Neck relief, measure: relief on the lowest string"));

  private static List<LessonSheets.File> files(List<WriterLog> logs, LessonFormat... formats) {
    return LessonSheets.of(
        InventedLesson.PLAN, logs, InventedLesson.SADDLES, TITLES, List.of(formats), Told.DATES);
  }

  private static String file(List<WriterLog> logs, LessonFormat format, int number) {
    return files(logs, format).get(number).text();
  }

  private static List<WriterLog> evil() {
    Instant at = InventedLesson.NOW;
    return InventedLesson.with(
        InventedLesson.logs(),
        "green",
        new LessonEvent.Came(at, EVIL),
        new LessonEvent.Reflected(at, 7, "Eda", EVIL, EVIL, EVIL, true),
        new LessonEvent.Stopped(at, EVIL),
        new LessonEvent.Held(at, new Spot("relief", "turn", "T", 9), EVIL, InventedLesson.TURN));
  }

  private static void golden(String name, String text) throws IOException {
    Path file = Path.of("src/test/resources/quarterturn/report/lesson", name);
    if (Boolean.getBoolean("golden.write")) {
      Files.createDirectories(Path.of("src/test/resources/quarterturn/report/lesson"));
      Files.writeString(file, text);
    }
    String wanted = Files.exists(file) ? Files.readString(file) : "";
    assertWithMessage(name).that(text).isEqualTo(wanted);
  }

  @ParameterizedTest
  @EnumSource(LessonFormat.class)
  void areAsTheFilesShow(LessonFormat format) throws IOException {
    List<LessonSheets.File> files = files(InventedLesson.logs(), format);
    assertThat(files.stream().map(f -> f.name()))
        .containsExactlyElementsIn(NAMES.stream().map(n -> n + "." + format.ending()).toList())
        .inOrder();
    for (int i : new int[] {0, 2, 5}) {
      golden(files.get(i).name(), files.get(i).text());
    }
  }

  @Test
  void stepsAreCalledByTitlesNoTwoOfThemAlike() throws Exception {
    StepTitles titles = StepTitles.of(List.of(new Shelf(null).load("setup")));
    assertThat(titles.titles().values()).containsNoDuplicates();
    assertThat(titles.titles().size()).isAtLeast(200);
    assertThat(titles.title("sign-off/relief-left"))
        .isEqualTo("Sign-off, as left: relief on the lowest string");
    assertThat(titles.title("relief/turn-rod")).isEqualTo("Neck relief, turn: the turn of the rod");
    assertThat(titles.title("gone/old-step")).isEqualTo("gone: old step");
    for (LessonFormat format :
        List.of(LessonFormat.TEXT, LessonFormat.MARKDOWN, LessonFormat.HTML)) {
      assertThat(file(InventedLesson.logs(), format, 0)).doesNotContain("relief/");
    }
  }

  /** A column or a part that would be empty is left out, and holds that are alike are one row. */
  @Test
  void nothingIsSaidTwiceOrEmpty() {
    Spot spot = new Spot("relief", "turn", "T", 9);
    LessonEvent held =
        new LessonEvent.Held(InventedLesson.NOW, spot, "the teacher's look", InventedLesson.TURN);
    List<WriterLog> logs = InventedLesson.with(InventedLesson.logs(), "blue", held, held, held);
    String text = file(logs, LessonFormat.TEXT, 0);
    assertThat(text.lines().filter(line -> line.contains("the teacher's look")).count())
        .isEqualTo(1);
    assertThat(text).doesNotContain("Predicted and read");
    List<WriterLog> red = logs.stream().filter(log -> log.equals(logs.get(0))).toList();
    String alone = file(red, LessonFormat.TEXT, 0);
    assertThat(alone).doesNotContain("Read alone");
    assertThat(alone).doesNotContain("Stops");
  }

  @Test
  void aSheetThatIsPrintedEarlyHoldsNoPredictionThatOthersStillMake() {
    Spot spot = new Spot("relief", "read", "Measure", 9);
    List<WriterLog> logs =
        InventedLesson.with(
            InventedLesson.logs(),
            "blue",
            new LessonEvent.Opened(InventedLesson.NOW, spot, false, false, null, 0.05, null));
    int round = logs.get(1).events().size();
    Prediction locked = new Prediction(null, 0.77, "zigzag", false);
    for (LessonSheets.File file :
        files(
            InventedLesson.with(
                logs, "blue", new LessonEvent.Predicted(InventedLesson.NOW, round, "Cleo", locked)),
            LessonFormat.values())) {
      assertThat(file.text()).doesNotContain("0.77");
      assertThat(file.text()).doesNotContain("zigzag");
    }
  }

  @Test
  void nobodyIsGradedRankedOrBlamed() {
    for (LessonSheets.File file : files(InventedLesson.logs(), LessonFormat.values())) {
      String words = file.text().toLowerCase(Locale.ROOT);
      for (String word : List.of("score", "rank", "mark:", "wrong", "fail", "%", "best")) {
        // Style and script words of a page are no words of the sheet.
        String read = file.name().endsWith("html") ? Jsoup.parse(words).text() : words;
        assertWithMessage(file.name() + " " + word).that(read).doesNotContain(word);
      }
      if (!file.name().startsWith("class")) {
        assertWithMessage(file.name()).that(file.text()).doesNotContain("creaked");
      }
    }
    String stops = file(InventedLesson.logs(), LessonFormat.TEXT, 0);
    String told = stops.substring(stops.indexOf("\nStops\n"), stops.indexOf("\nQuestions that"));
    assertThat(told).contains("It creaked.");
    assertThat(told).doesNotContain("Cleo");
    assertThat(told).doesNotContain("Blue");
  }

  @Test
  void whatAStudentTypedIsTextInHtml() throws Exception {
    for (LessonSheets.File file : files(evil(), LessonFormat.HTML)) {
      SheetFormatsTest.wellFormed(file.text());
      Document page = Jsoup.parse(file.text());
      assertThat(page.select("script")).isEmpty();
    }
    assertThat(Jsoup.parse(file(evil(), LessonFormat.HTML, 0)).text()).contains(EVIL);
  }

  @Test
  void markdownKeepsItToo() {
    for (LessonSheets.File file : files(evil(), LessonFormat.MARKDOWN)) {
      assertThat(Jsoup.parse(SheetFormatsTest.rendered(file.text())).select("script")).isEmpty();
    }
  }

  @Test
  void noCellIsAFormula() throws IOException {
    boolean seen = false;
    for (LessonSheets.File file : files(evil(), LessonFormat.CSV)) {
      for (CSVRecord row : SheetFormatsTest.records(file.text())) {
        for (String cell : row) {
          assertWithMessage(cell).that(cell).doesNotMatch("(?s)[=+@\\t\\r].*|-[^0-9].*");
          seen |= cell.equals("'" + EVIL);
        }
      }
    }
    assertThat(seen).isTrue();
  }

  @Test
  void everyCsvRowIsAsWideAsItsHead() throws IOException {
    for (LessonSheets.File file : files(evil(), LessonFormat.CSV)) {
      List<CSVRecord> rows = SheetFormatsTest.records(file.text());
      rows.forEach(row -> assertThat(row.size()).isEqualTo(rows.get(0).size()));
    }
  }

  @Test
  void aFilesNameStaysInItsFolder() {
    assertThat(LessonSheets.fileName("../../etc")).isEqualTo("etc");
    assertThat(LessonSheets.fileName("Zoë Ångström")).isEqualTo("zoe-angstrom");
    assertThat(LessonSheets.fileName("琴")).isEqualTo("student");
    assertThat(LessonSheets.fileName("x".repeat(99))).hasLength(24);
  }

  @Test
  void aReadingThatIsHiddenStaysHidden() {
    Instant at = InventedLesson.NOW;
    List<WriterLog> logs =
        InventedLesson.with(
            InventedLesson.logs(),
            "blue",
            new LessonEvent.Accepted(
                at, new Ref("desk", 9), new Order.Release(InventedLesson.BLUE_STOP, Value.NONE)),
            new LessonEvent.Opened(
                at, new Spot("relief", "read", "Measure", 3), false, true, null, 0.05, null),
            new LessonEvent.Predicted(
                at, 8, "Cleo", new Prediction(Direction.SAME, 0.77, "Because.", false)));
    assertThat(file(logs, LessonFormat.TEXT, 0)).doesNotContain("0.77");
    List<String> desk =
        DeskView.of(InventedLesson.PLAN, logs).spreads().stream()
            .flatMap(spread -> DeskWords.spread(spread).stream())
            .toList();
    assertThat(desk).contains("1 prediction is locked and hidden.");
  }

  /** Where one can't be written, none stays, nor a folder that was made for them. */
  @Test
  void allSheetsAreWrittenOrNone(@TempDir Path folder) throws IOException {
    LessonSheets.File first = new LessonSheets.File("a.txt", "one");
    LessonSheets.File second = new LessonSheets.File("gone/b.txt", "two");
    for (Path to : List.of(folder.resolve("new/sheets"), folder)) {
      assertThrows(IOException.class, () -> SheetFolder.into(to, List.of(first, second)));
      assertThat(folder.toFile().list()).isEmpty();
    }
    Path there = Files.writeString(folder.resolve("b.txt"), "mine");
    LessonSheets.File over = new LessonSheets.File("b.txt", "two");
    IOException e =
        assertThrows(IOException.class, () -> SheetFolder.into(folder, List.of(first, over)));
    assertThat(e).hasMessageThat().contains("b.txt is there already; name another folder");
    assertThat(folder.toFile().list()).asList().containsExactly("b.txt");
    assertThat(Files.readString(there)).isEqualTo("mine");
    Files.delete(there);
    SheetFolder.into(folder, List.of(first, over));
    assertThat(folder.toFile().list()).asList().containsExactly("a.txt", "b.txt");
  }
}
