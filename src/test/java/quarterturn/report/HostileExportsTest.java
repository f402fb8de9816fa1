package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Spot;
import quarterturn.lesson.store.WriterLog;
import quarterturn.report.lesson.LessonFormat;
import quarterturn.report.lesson.LessonSheets;
import quarterturn.report.lesson.StepTitles;
import quarterturn.report.sheet.RepairNote;
import quarterturn.report.sheet.Sheet;
import quarterturn.report.sheet.SheetFormat;
import quarterturn.report.sheet.SheetFormatsTest;
import quarterturn.session.Event;
import quarterturn.session.Program;
import quarterturn.unit.Bracket;
import quarterturn.unit.Printable;

/**
 * Everything that is exported, in every format, with hostile text in each place where a person can
 * put one: the reader of that format finds the text and nothing that it does.
 */
class HostileExportsTest {
  private static final String MARK = "zq";

  /** Each with a mark before it or behind it, by which it is found. */
  private static final List<String> HOSTILE =
      List.of(
          MARK + "<script>alert(1)</script></td></style><img src=x onerror=alert(1)>\" onload=\"x",
          MARK + "\u001b[31m\u001b]0;t\u0007\u009b31m\u202eright\u2066left\u200b",
          MARK + "\r\nEND:VEVENT\r\n# heading\r\n| a | b |\n\u2028line\u2029part\u0085next",
          MARK + "`code` **bold** [a](http://example.invalid) ![b](x) \ud800\uffff\u0000");

  /** What a table would reckon. */
  private static final List<String> FORMULAS =
      List.of("=1+1" + MARK, "+1" + MARK, "-1+1" + MARK, "@sum(1)" + MARK, "\t=1" + MARK);

  private interface Reader {
    void read(String text, String hostile) throws Exception;
  }

  /** A kind of export with the formats it has, and how each is read back. */
  private record Export(String name, Reader reader, Written written) {}

  private interface Written {
    List<String> with(String hostile) throws Exception;
  }

  @TestFactory
  Stream<DynamicTest> nothingDoesAnything() {
    List<Export> exports = new ArrayList<>();
    for (SheetFormat format : SheetFormat.values()) {
      Reader reader = reader(format.name());
      exports.add(
          new Export(
              "sheet " + format,
              reader,
              hostile -> List.of(format.write(sheet(hostile), Told.DATES))));
      if (format != SheetFormat.CSV && format != SheetFormat.JSON) {
        exports.add(
            new Export("note " + format, reader, hostile -> List.of(note(format, hostile))));
      }
    }
    for (LessonFormat format : LessonFormat.values()) {
      exports.add(new Export("lesson " + format, reader(format.name()), h -> lesson(format, h)));
    }
    exports.add(new Export("calendar", HostileExportsTest::calendar, HostileExportsTest::dues));
    return exports.stream()
        .map(export -> DynamicTest.dynamicTest(export.name(), () -> check(export)));
  }

  private static void check(Export export) throws Exception {
    List<String> all = new ArrayList<>(HOSTILE);
    if (export.name().endsWith("CSV")) {
      all.addAll(FORMULAS);
    }
    for (String hostile : all) {
      List<String> texts = export.written().with(hostile);
      assertWithMessage("it is told").that(String.join("", texts)).contains(MARK);
      for (String text : texts) {
        assertThat(StandardCharsets.UTF_8.newEncoder().canEncode(text)).isTrue();
        // A page lets long words break by a sign of its own.
        String plain = export.name().endsWith("HTML") ? text.replace("\u200b", "") : text;
        for (String line : plain.split("\r?\n", -1)) {
          assertWithMessage(line).that(Printable.of(line)).isEqualTo(line);
        }
        export.reader().read(text, hostile);
      }
    }
  }

  /** What reads a format back; a new format has to be named here. */
  private static Reader reader(String format) {
    return switch (format) {
      case "TEXT" -> (text, hostile) -> {};
      case "MARKDOWN" -> (text, hostile) -> page(SheetFormatsTest.rendered(text));
      case "HTML" ->
          (text, hostile) -> {
            SheetFormatsTest.wellFormed(text);
            page(text);
          };
      case "CSV" -> HostileExportsTest::cells;
      case "JSON" -> HostileExportsTest::json;
      default -> throw new AssertionError("nothing reads " + format);
    };
  }

  private static void page(String html) {
    Document page = Jsoup.parse(html);
    assertThat(page.select("script, img, a, iframe, em, code, [onload], [onerror]")).isEmpty();
    assertThat(page.select("h1")).hasSize(1);
    assertThat(page.select("h1, h2, h3").eachText()).doesNotContain("heading");
  }

  private static void cells(String csv, String hostile) throws Exception {
    List<CSVRecord> rows = SheetFormatsTest.records(csv);
    for (CSVRecord row : rows) {
      assertThat(row.size()).isEqualTo(rows.get(0).size());
      for (String cell : row) {
        // A number may begin with its sign; nothing that a table would reckon may.
        assertWithMessage(cell).that(cell).doesNotMatch("(?s)[=+@\\t\\r\\n].*|-[0-9.]*[^0-9.].*");
      }
    }
  }

  private static void json(String json, String hostile) throws Exception {
    JsonNode read = new JsonMapper().readTree(json);
    assertWithMessage("nothing is lost").that(read.at("/complaint").textValue()).isEqualTo(hostile);
  }

  private static void calendar(String text, String hostile) throws Exception {
    Calendar calendar =
        new CalendarBuilder()
            .build(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    assertThat(calendar.getComponents("VEVENT")).hasSize(1);
  }

  private static List<Event> session(String hostile) {
    return List.of(
        SetUp.started(hostile),
        new Event.Noted(SetUp.minute(1), "complaint", hostile),
        new Event.Chose(SetUp.minute(3), hostile, hostile, null),
        SetUp.relief(5, hostile, new Bracket(0.60, 0.65)),
        SetUp.turned(6, 0.125),
        SetUp.relief(7, hostile, new Bracket(0.35, 0.40)),
        new Event.Ended(SetUp.minute(10), "stop", true, hostile, hostile));
  }

  private static Sheet sheet(String hostile) {
    return Sheet.of("demo", session(hostile), SetUp.LIBRARY).with(hostile, hostile);
  }

  private static String note(SheetFormat format, String hostile) {
    return format.write(
        RepairNote.TITLE,
        RepairNote.of(sheet(hostile), session(hostile), SetUp.LIBRARY, Told.DATES));
  }

  private static List<String> lesson(LessonFormat format, String hostile) {
    Instant at = InventedLesson.NOW;
    List<WriterLog> logs =
        InventedLesson.with(
            InventedLesson.logs(),
            "green",
            new LessonEvent.Came(at, hostile),
            new LessonEvent.Reflected(at, 7, "Eda", hostile, hostile, hostile, true),
            new LessonEvent.Stopped(at, hostile),
            new LessonEvent.Held(
                at, new Spot("relief", "turn", hostile, 9), hostile, InventedLesson.TURN));
    List<LessonSheets.File> files =
        LessonSheets.of(
            InventedLesson.PLAN,
            logs,
            InventedLesson.SADDLES,
            new StepTitles(Map.of()),
            List.of(format),
            Told.DATES);
    return files.stream().map(LessonSheets.File::text).toList();
  }

  private static List<String> dues(String hostile) {
    return List.of(DueCalendar.of(List.of(Coming.on(hostile, hostile)), Program.here()));
  }
}
