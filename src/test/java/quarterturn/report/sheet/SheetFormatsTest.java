package quarterturn.report.sheet;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.xml.sax.InputSource;
import quarterturn.report.SetUp;
import quarterturn.report.Told;

/** The formats, each read back by a reader that is not ours. */
public class SheetFormatsTest {
  private static final Sheet WHOLE = Sheet.of("2027-03-01-demo", SetUp.whole(), SetUp.LIBRARY);
  private static final Sheet GIVEN = Sheet.of("2027-03-01-demo", SetUp.handedOver(), SetUp.LIBRARY);

  static void assertGolden(String text, String name) throws IOException {
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(Path.of("src/test/resources/quarterturn/report/sheet", name), text);
    } else {
      assertThat(text).isEqualTo(golden(name));
    }
  }

  static String golden(String name) throws IOException {
    try (InputStream in = SheetFormatsTest.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  static String write(SheetFormat format, Sheet sheet) {
    return format.write(sheet, Told.DATES);
  }

  /** Reads a page as any browser's XML parser would; nothing is fetched for it. */
  public static void wellFormed(String page) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setNamespaceAware(true);
    DocumentBuilder builder = factory.newDocumentBuilder();
    builder.setErrorHandler(null);
    builder.parse(new InputSource(new StringReader(page)));
  }

  public static String rendered(String markdown) {
    List<TablesExtension> tables = List.of((TablesExtension) TablesExtension.create());
    return HtmlRenderer.builder()
        .extensions(tables)
        .build()
        .render(Parser.builder().extensions(tables).build().parse(markdown));
  }

  public static List<CSVRecord> records(String csv) throws IOException {
    return CSVFormat.RFC4180.parse(new StringReader(csv)).getRecords();
  }

  @Test
  void text() throws IOException {
    assertGolden(write(SheetFormat.TEXT, WHOLE), "sheet-whole.txt");
    assertGolden(write(SheetFormat.TEXT, GIVEN), "sheet-handed-over.txt");
  }

  @Test
  void markdown() throws IOException {
    assertGolden(write(SheetFormat.MARKDOWN, WHOLE), "sheet-whole.md");
  }

  @Test
  void markdownTablesAreTables() {
    Document page = Jsoup.parse(rendered(write(SheetFormat.MARKDOWN, WHOLE)));
    assertThat(page.select("table")).hasSize(11);
    Element relief = page.select("table").get(0);
    assertThat(relief.select("tbody tr").get(0).select("td").eachText())
        .containsExactly("E1", "0.60 to 0.65", "above", "0.35 to 0.40", "in", "0.30 to 0.45")
        .inOrder();
    assertThat(page.select("h2").eachText()).containsAtLeast("Outcome", "Still open").inOrder();
    assertThat(page.text()).contains("fret 2 | open E only");
  }

  @Test
  void csvHasEveryReadingOnARowOfItsOwn() throws IOException {
    String csv = write(SheetFormat.CSV, WHOLE);
    assertWithMessage("RFC 4180 ends every line so")
        .that(csv.replace("\r\n", "").matches("(?s).*[\r\n].*"))
        .isFalse();
    List<CSVRecord> rows = records(csv);
    assertThat(rows).hasSize(WHOLE.readings().size() + 1);
    rows.forEach(row -> assertThat(row.size()).isEqualTo(20));
    assertThat(rows.get(3).toList())
        .containsExactly(
            "2027-03-01T10:12:00Z",
            "relief",
            "E1",
            "0.6",
            "0.65",
            "",
            "mm",
            "1 17",
            "8",
            "0.05",
            "as-found",
            "0.3",
            "0.45",
            "out",
            "the rod was turned",
            "",
            "",
            "",
            "",
            "40")
        .inOrder();
    assertThat(rows.get(18).get(5)).isEqualTo("-3");
  }

  @Test
  void anOpenBoundIsEmpty() throws IOException {
    CSVRecord touching = records(write(SheetFormat.CSV, GIVEN)).get(1);
    assertThat(touching.get(3)).isEmpty();
    assertThat(touching.get(4)).isEqualTo("0");
  }

  @Test
  void aCellThatASpreadsheetWouldCarryOutIsText() {
    assertThat(SheetCsv.text("=1+1")).isEqualTo("'=1+1");
    assertThat(SheetCsv.text("+1")).isEqualTo("'+1");
    assertThat(SheetCsv.text("-1")).isEqualTo("'-1");
    assertThat(SheetCsv.text("@a")).isEqualTo("'@a");
    assertThat(SheetCsv.text("\t=1")).startsWith("'");
    assertThat(SheetCsv.text("=a(\"b,c\")")).isEqualTo("\"'=a(\"\"b,c\"\")\"");
    assertThat(SheetCsv.text("E1")).isEqualTo("E1");
  }

  @Test
  void json() throws IOException {
    JsonNode json = new JsonMapper().readTree(write(SheetFormat.JSON, WHOLE));
    assertThat(json.at("/instrument").textValue()).isEqualTo("demo-bass");
    assertThat(json.at("/rod/net").doubleValue()).isWithin(1e-12).of(0.25);
    assertThat(json.at("/play_test/as_left").textValue()).isEqualTo("Nowhere");
    assertThat(json.at("/rod/moves").size()).isEqualTo(2);
    assertThat(json.at("/results/0/as_found/low").doubleValue()).isWithin(1e-12).of(0.6);
    assertThat(json.at("/results/0/as_left/stands").textValue()).isEqualTo("in");
    assertThat(json.at("/results/0/window/1").doubleValue()).isWithin(1e-12).of(0.45);
    assertThat(json.at("/waits/1/skipped").booleanValue()).isTrue();
    assertThat(json.at("/settings/0/amount_mm").doubleValue()).isWithin(1e-12).of(-0.5);
    assertThat(json.at("/outcome/hand_over").booleanValue()).isFalse();
    assertThat(json.at("/next").size()).isEqualTo(3);
    assertThat(json.at("/limits/0").textValue())
        .isEqualTo("It does not replace a qualified repairer.");
    assertWithMessage("an open bound")
        .that(
            new JsonMapper()
                .readTree(write(SheetFormat.JSON, GIVEN))
                .at("/results/0/as_left/low")
                .isNull())
        .isTrue();
  }

  @Test
  void everySessionHasTheSameKeys() throws IOException {
    JsonMapper mapper = new JsonMapper();
    List<String> whole =
        new ArrayList<>(
            mapper.readTree(write(SheetFormat.JSON, WHOLE)).properties().stream()
                .map(key -> key.getKey())
                .toList());
    Sheet bare = Sheet.of("demo", List.of(SetUp.started(null)), SheetTest.NOTHING);
    List<String> none =
        mapper.readTree(write(SheetFormat.JSON, bare)).properties().stream()
            .map(key -> key.getKey())
            .toList();
    assertThat(whole.remove("play_test")).isTrue();
    assertThat(none).isEqualTo(whole);
    assertThat(whole).contains("outcome");
  }

  @Test
  void htmlStandsByItself() throws Exception {
    String html = write(SheetFormat.HTML, WHOLE);
    wellFormed(html);
    Document page = Jsoup.parse(html);
    assertThat(page.select("script, link, img, iframe, object, embed, form, base, a")).isEmpty();
    assertThat(page.select("[src], [href], [style], [onload], [onclick]")).isEmpty();
    String style = page.select("style").html();
    assertThat(style).doesNotContain("url(");
    assertThat(style).doesNotContain("@import");
    assertThat(style).contains("@media print");
    assertThat(style).contains("prefers-color-scheme: dark");
    assertWithMessage("no address but the two names of languages")
        .that(
            html.replace("http://www.w3.org/1999/xhtml", "")
                .replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("://");
    assertThat(page.select("html").attr("lang")).isEqualTo("en");
    assertThat(page.select("h1")).hasSize(1);
  }

  @Test
  void htmlTablesCanBeFollowedWithoutSeeing() {
    Document page = Jsoup.parse(write(SheetFormat.HTML, WHOLE));
    assertThat(page.select("table").size()).isAtLeast(9);
    for (Element heading : page.select("th")) {
      assertThat(heading.attr("scope")).isAnyOf("row", "col");
    }
    for (Element row : page.select("tbody tr")) {
      assertThat(row.select("th[scope=row]")).hasSize(1);
    }
    for (Element table : page.select("table:has(thead)")) {
      assertThat(table.select("caption").text()).isNotEmpty();
    }
  }

  @Test
  void thePlotShowsReadingsTurnsAndTheWindow() {
    Element svg =
        Objects.requireNonNull(Jsoup.parse(write(SheetFormat.HTML, WHOLE)).selectFirst("svg"));
    assertThat(svg.select("rect.reading")).hasSize(3);
    assertThat(svg.select("path.turn")).hasSize(2);
    assertThat(svg.select("rect.window")).hasSize(1);
    assertThat(svg.attr("role")).isEqualTo("img");
    for (String id : svg.attr("aria-labelledby").split(" ", -1)) {
      assertThat(svg.select("#" + id)).hasSize(1);
    }
    assertThat(svg.select("desc").text())
        .isEqualTo(
            "Readings and turns, oldest first, in mm: 0.60 to 0.65 > tightened 1/8 > 0.45 to 0.50"
                + " > tightened 1/8 > 0.35 to 0.40. The range is 0.30 to 0.45 mm.");
    double above = top(svg, 0);
    double inside = top(svg, 2);
    double window = Double.parseDouble(svg.select("rect.window").attr("y"));
    assertWithMessage("0.60 stands above the window, 0.35 within").that(above).isLessThan(window);
    assertThat(inside).isGreaterThan(window);
    Sheet none = Sheet.of("demo", List.of(SetUp.started(null)), SetUp.LIBRARY);
    assertThat(Jsoup.parse(write(SheetFormat.HTML, none)).select("svg")).isEmpty();
  }

  private static double top(Element svg, int reading) {
    return Double.parseDouble(svg.select("rect.reading").get(reading).attr("y"));
  }

  @ParameterizedTest
  @EnumSource(SheetFormat.class)
  void whatASheetCannotDoStandsOnIt(SheetFormat format) {
    boolean people = format != SheetFormat.CSV;
    assertThat(write(format, WHOLE).replaceAll("\\s+", " ").contains(Sheet.LIMITS.get(0)))
        .isEqualTo(people);
  }
}
