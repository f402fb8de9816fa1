package quarterturn.script;

import static com.google.common.truth.Truth.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import quarterturn.session.listing.Glance;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;

/** What src/docs/json-lines.md shows of the state of open sessions is what is printed. */
class JsonLinesPageTest {
  private static final Instant NOW = Instant.parse("2027-03-02T08:36:00Z");

  private static String part() throws Exception {
    String page = Files.readString(Path.of("src/docs/json-lines.md"));
    String from = page.substring(page.indexOf("## The state of all open sessions"));
    return from.substring(0, from.indexOf("\n## "));
  }

  /** The waiting session of the page. */
  private static JsonNode printed() throws Exception {
    Glance glance =
        new Glance(
            "2027-03-02-relief-x2m7",
            "relief",
            "blue",
            "bass-34",
            NOW,
            NOW,
            null,
            "rod turned, strings at pitch, neck not yet settled",
            Instant.parse("2027-03-02T08:43:00Z"),
            null,
            false,
            NOW,
            NOW,
            null,
            null,
            true,
            "Ana",
            Glance.Rod.NOT_TURNED);
    String place = "Neck relief, part 6 of 7: Settle and read";
    Work work = new Work(glance, "4711", NOW);
    return new JsonMapper().readTree(WorkJson.of(work, place, new Dates(ZoneOffset.UTC)));
  }

  @Test
  void theExampleIsWhatIsPrinted() throws Exception {
    String example = part().split("```")[1].strip().replace("\n", " ").replace(", \"", ",\"");
    assertThat(new JsonMapper().readTree(example)).isEqualTo(printed());
  }

  @Test
  void everyKeyIsExplained() throws Exception {
    List<String> keys = new ArrayList<>();
    printed().fieldNames().forEachRemaining(keys::add);
    List<String> told = new ArrayList<>();
    Matcher row = Pattern.compile("(?m)^\\| `([a-z_]+)` \\|").matcher(part());
    while (row.find()) {
      told.add(row.group(1));
    }
    assertThat(told).containsExactlyElementsIn(keys).inOrder();
  }

  @Test
  void everyStateIsNamed() throws Exception {
    for (Work.State state : Work.State.values()) {
      assertThat(part()).contains("`" + state.word() + "`");
    }
  }
}
