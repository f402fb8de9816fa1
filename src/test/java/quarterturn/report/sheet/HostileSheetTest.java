package quarterturn.report.sheet;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterturn.Draws;
import quarterturn.report.SetUp;
import quarterturn.report.Table;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;
import quarterturn.unit.Printable;

/** Whatever was typed is shown as text by every format, and does nothing. */
class HostileSheetTest {
  private static final int SHEETS = Draws.of(30);

  private static final List<String> PIECES =
      List.of(
          "<script>alert(1)</script>",
          "</style><img src=x onerror=alert(1)>",
          "\" onload=\"x",
          "'",
          "&amp;",
          "&lt;",
          "]]>",
          "<!--",
          "\n",
          "\r\n# heading\n- item\n| a | b |\n",
          "|",
          "\\|",
          "\\",
          "`code`",
          "**bold** _it_",
          "[a](http://example.invalid)",
          "http://example.invalid www.example.invalid",
          "=cmd|' /C calc'!A0",
          "+1",
          "-1. ",
          "@sum(1)",
          "\t=1",
          ",",
          "\"\"",
          "🎸",
          "琴",
          "\u001b[31m",
          "\u0000\u0007\u009b",
          "\u202e\u200b",
          "\ud800",
          "\uffff",
          "a plain word ",
          "x".repeat(120));

  static IntStream seeds() {
    return IntStream.range(0, SHEETS);
  }

  private static String drawn(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = 1 + random.nextInt(5); i > 0; i--) {
      text.append(PIECES.get(random.nextInt(PIECES.size())));
    }
    return text.toString();
  }

  /** A sheet whose every text was drawn. */
  private static List<Event> session(Random random) {
    String string = drawn(random);
    return List.of(
        SetUp.started(drawn(random)),
        new Event.Noted(SetUp.minute(1), "complaint", drawn(random)),
        new Event.Noted(SetUp.minute(2), "heard", drawn(random)),
        new Event.Chose(SetUp.minute(3), drawn(random), drawn(random), null),
        new Event.Accepted(SetUp.minute(4), drawn(random), drawn(random), List.of(drawn(random))),
        SetUp.relief(5, string, new Bracket(0.60, 0.65)),
        SetUp.turned(6, 0.125),
        SetUp.relief(7, string, new Bracket(0.35, 0.40)),
        new Event.Adjusted(SetUp.minute(8), "set", drawn(random), drawn(random), 0.3),
        new Event.Waited(SetUp.minute(9), "settle", drawn(random)),
        new Event.Ended(SetUp.minute(10), "stop", true, drawn(random), drawn(random)));
  }

  private static Sheet sheet(int seed) {
    return Sheet.of("demo", session(new Random(seed)), SetUp.LIBRARY);
  }

  /** A text as a browser shows it: printable, and with its blanks as one. */
  private static String shown(String text) {
    return Printable.of(text).replaceAll("\\s+", " ").strip();
  }

  private static String complaint(Sheet sheet) {
    String complaint = sheet.complaint();
    assertThat(complaint).isNotNull();
    return complaint == null ? "" : complaint;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void text(int seed) {
    String text = SheetFormatsTest.write(SheetFormat.TEXT, sheet(seed));
    for (String line : text.split("\n", -1)) {
      assertThat(Printable.of(line)).isEqualTo(line);
      assertWithMessage(line).that(Table.columns(line)).isAtMost(SheetText.WIDTH);
    }
    assertThat(text).contains("Limits of this sheet");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void html(int seed) throws Exception {
    Sheet sheet = sheet(seed);
    String html = SheetFormatsTest.write(SheetFormat.HTML, sheet);
    SheetFormatsTest.wellFormed(html);
    Document page = Jsoup.parse(html);
    assertThat(page.select("script, img, a, iframe")).isEmpty();
    assertThat(page.select("style")).hasSize(1);
    page.getAllElements()
        .forEach(
            element ->
                element
                    .attributes()
                    .forEach(a -> assertThat(a.getKey()).doesNotContainMatch("^on")));
    assertThat(page.select("tr:has(th:contains(Complaint)) td").text())
        .isEqualTo(shown(complaint(sheet)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void markdown(int seed) {
    Sheet sheet = sheet(seed);
    String html = SheetFormatsTest.rendered(SheetFormatsTest.write(SheetFormat.MARKDOWN, sheet));
    Document page = Jsoup.parse(html);
    assertThat(page.select("script, img, a, iframe, em, code, hr, h3, blockquote, ol")).isEmpty();
    assertThat(page.select("h1")).hasSize(1);
    assertThat(page.select("li li")).isEmpty();
    List<String> cells =
        page.select("table").get(0).select("tbody tr").get(0).select("td").eachText();
    assertThat(cells)
        .containsExactly(
            shown(SheetRows.string(sheet.readings().get(0).read())),
            "0.60 to 0.65",
            "-",
            "not read since", // a change that nobody knows
            "-",
            "-")
        .inOrder();
    assertThat(page.select("li:has(strong:contains(Complaint))").text())
        .isEqualTo("Complaint: " + shown(complaint(sheet)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void csv(int seed) throws Exception {
    Sheet sheet = sheet(seed).with("=1+2", null);
    String csv = SheetFormatsTest.write(SheetFormat.CSV, sheet);
    assertThat(StandardCharsets.UTF_8.newEncoder().canEncode(csv)).isTrue();
    List<CSVRecord> rows = SheetFormatsTest.records(csv);
    assertThat(rows).hasSize(3);
    for (CSVRecord row : rows) {
      assertThat(row.size()).isEqualTo(20);
      assertThat("=+-@\t\r\n").doesNotContain(row.get(2).substring(0, 1));
    }
    assertThat(rows.get(1).get(18)).isEqualTo("'=1+2");
    String string = SheetRows.string(sheet.readings().get(0).read());
    assertThat(rows.get(1).get(2)).isAnyOf(Printable.of(string), "'" + Printable.of(string));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void json(int seed) throws Exception {
    Sheet sheet = sheet(seed);
    String json = SheetFormatsTest.write(SheetFormat.JSON, sheet);
    assertThat(json.strip().chars().allMatch(c -> c >= ' ' && c < 0x7f)).isTrue();
    JsonNode read = new JsonMapper().readTree(json);
    assertWithMessage("nothing is lost")
        .that(read.at("/complaint").textValue())
        .isEqualTo(complaint(sheet));
  }
}
