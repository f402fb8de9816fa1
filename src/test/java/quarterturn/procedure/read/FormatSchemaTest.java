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
    assertThat(good).contains("quantity: pickup-gap");
    String bad = good.replace("quantity: pickup-gap", "quantity: pickup-gapp");
    Stream<String> said =
        complaints(Readings.utf8(bad)).stream().map(one -> one.getInstanceLocation().toString());
    assertThat(said.toList()).contains("$.steps[3].quantity");
  }

  @Test
  void everyKeyAndKindHasItsDescription() throws IOException {
    JsonNode schema = new ObjectMapper().readTree(FormatSchema.text());
    assertThat(schema.path("$defs").size()).isEqualTo(Keys.KINDS.size() + 4);
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
