package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.read.form.Keys;

/** The schema against a validator that knows nothing of procedures. */
class FormatSchemaTest {
  private static final Path PUBLISHED = Path.of("procedures/procedure.schema.json");
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
  private static final JsonSchemaFactory DRAFT =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);

  private static Set<ValidationMessage> complaints(byte[] yaml) throws IOException {
    JsonSchema schema = DRAFT.getSchema(FormatSchema.text());
    return schema.validate(YAML.readTree(yaml));
  }

  @Test
  void itIsASchema() throws IOException {
    JsonNode schema = new ObjectMapper().readTree(FormatSchema.text());
    JsonSchema meta = DRAFT.getSchema(URI.create("https://json-schema.org/draft/2020-12/schema"));
    assertThat(meta.validate(schema)).isEmpty();
  }

  /** To accept a change on purpose, run this with {@code -Dgolden.write=true} and read the diff. */
  @Test
  void itIsPublishedAsItIsPrinted() throws IOException {
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(PUBLISHED, FormatSchema.text());
    }
    assertThat(Files.readString(PUBLISHED)).isEqualTo(FormatSchema.text());
  }

  @Test
  void everyShippedProcedureHoldsToIt() throws IOException {
    List<String> ids = new Shelf(null).procedures();
    assertThat(ids.size()).isAtLeast(12);
    for (String id : ids) {
      byte[] file = Readings.bytes("/procedures/" + id + ".yaml");
      assertWithMessage(id).that(complaints(file)).isEmpty();
    }
  }

  @Test
  void everyGoodFileHoldsToIt() throws IOException {
    for (Path file : Readings.files("good")) {
      assertWithMessage(file.toString()).that(complaints(Files.readAllBytes(file))).isEmpty();
    }
  }

  /** What these bad files have in common: their structure is wrong, or a word of a list. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "bad-wait",
        "one-option",
        "compute-has-no-text",
        "only-a-list",
        "blank-in-title",
        "unknown-kind",
        "unknown-key",
        "go-and-branches",
        "missing-keys",
        "missing-top-keys",
        "missing-string",
        "string-on-humidity",
        "unknown-quantity",
        "unknown-calculation",
        "unknown-blank",
        "bad-revision",
        "bad-ids",
        "empty-text",
        "number-without-unit",
        "wrong-type",
        "step-no-mapping",
        "option-without-parts",
        "no-steps",
        "feels",
        "unknown-words",
        "questions",
      })
  void aFileThatIsWrongInStructureFailsIt(String name) throws IOException {
    assertThat(complaints(Readings.bytes("bad/" + name + ".yaml"))).isNotEmpty();
  }

  @Test
  void theFaultIsFoundWhereItIs() throws IOException {
    String good = new String(Readings.bytes("/procedures/pickups.yaml"), "UTF-8");
    assertThat(good).contains("read: pickup-gap");
    String bad = good.replace("read: pickup-gap", "read: pickup-gapp");
    Stream<String> said =
        complaints(Readings.utf8(bad)).stream().map(one -> one.getInstanceLocation().toString());
    assertThat(said.toList()).contains("$.steps[3].read");
  }

  /** A sheet with one entry in the forms that people write. */
  private static byte[] sheet(String entry) {
    return Readings.utf8(
        """
        procedure: small
        revision: 1
        title: Small
        purpose: Small.
        tools: [capo]
        steps:
          - part: All
        """
            + entry.indent(2));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "- part: More\n  only if: relief in target",
        "- tell: Some text.\n  id: some\n  unless: relief in target",
        "- choose: one\n  text: Which?\n  answers:\n    - a: One -> on\n    - not sure",
        "- choose: one\n  text: Which?\n  answers:\n    - a: One\n      establishes: [detuned]\n"
            + "      changes: strings\n    - not sure: on",
        "- choose: one\n  text: Which?\n  answers:\n    - {is: a, label: One}\n    - b: Two",
        "- cases:\n    - relief in target: go on\n    - otherwise: on\n  id: some",
        "- compute: one\n  branches:\n    - {when: relief in target, go: on}\n    - otherwise: go on",
        "- read: humidity\n  text: Read it.\n  cannot: on",
        "- read: relief\n  id: low\n  string: lowest\n  text: Read it.\n  agree: within 0.05 mm\n"
            + "  again: {text: Again.}\n  differ: go on\n  cannot: {id: no-gauge}\n"
            + "  then:\n    - relief in target: go on",
        "- turn: rod, as advised\n  id: one\n  text: Turn.\n  felt: {free: on}",
        "- turn: one\n  text: Turn.\n  amount: undo\n  limit: 1/8 turn\n"
            + "  felt: {smooth: a, stiff: a, jammed: a, free: a, noise: a, slipped: a}",
        "- use: some-block\n  id: one\n  only if: relief in target\n  tell: {text: Some.}\n"
            + "  then:\n    - refitted: on",
        "- call: strings\n  then:\n    - strings is kept: go on\n    - strings is not kept: on",
        "- done: one\n  text: The end.",
      })
  void aSheetAsPeopleWriteItHoldsToIt(String entry) throws IOException {
    assertThat(complaints(sheet(entry))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "- part: More\n  when: relief in target",
        "- tell: Some text.\n  idd: some",
        "- tell: some\n  text: Some text.\n  id: other",
        "- tell: Some text.\n  answers: [not sure, not sure]",
        "- choose: one\n  text: Which?",
        "- choose: one\n  text: Which?\n  answers:\n    - a: One\n      b: Two\n    - not sure",
        "- choose: one\n  text: Which?\n  answers:\n    - a: One\n    - unsure",
        "- choose: one\n  text: Which?\n  answers:\n    - a: One\n    - b: [Two]",
        "- cases:\n    - relief in target: Go on!",
        "- cases:\n    - relief in target: on\n      relief above target: on",
        "- cases:\n    - {when: relief in target, goo: on}",
        "- cases:\n    - otherwise: on\n  brief: Some.",
        "- read: humidty\n  text: Read it.",
        "- read: humidity\n  text: Read it.\n  string: lowest",
        "- read: relief\n  text: Read it.",
        "- read: humidity\n  text: Read it.\n  agrees: within 1 %",
        "- read: humidity\n  text: Read it.\n  agree: nearly",
        "- read: humidity\n  text: Read it.\n  cannot: Go on!",
        "- turn: rod, sideways\n  text: Turn.",
        "- turn: rod, as advised\n  text: Turn.\n  felt: {fre: on}",
        "- turn: rod, as advised",
        "- turn: one\n  text: Turn.\n  amount: undo\n  limit: 1/8 turn\n  felt: {smooth: a}",
        "- turn: one\n  text: Turn.",
        "- use: Some block",
        "- call: strings\n  ends:\n    - strings is kept: go on",
      })
  void aSheetThatIsWrongInItsFormsFailsIt(String entry) throws IOException {
    assertThat(complaints(sheet(entry))).isNotEmpty();
  }

  @Test
  void everyKeyAndKindHasItsDescription() throws IOException {
    JsonNode schema = new ObjectMapper().readTree(FormatSchema.text());
    assertThat(schema.path("$defs").size()).isEqualTo(Keys.KINDS.size() + 6);
    for (String kind : Keys.KINDS) {
      JsonNode def = schema.path("$defs").path(kind);
      assertWithMessage(kind).that(def.path("description").asText()).isNotEmpty();
      def.path("properties")
          .properties()
          .forEach(
              key ->
                  assertWithMessage(kind + " " + key.getKey())
                      .that(key.getValue().path("description").asText())
                      .isNotEmpty());
    }
  }
}
