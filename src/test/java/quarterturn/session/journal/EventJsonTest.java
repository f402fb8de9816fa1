package quarterturn.session.journal;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.store.Samples;

class EventJsonTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** A kind of event that is added later must be added to the samples, or this fails. */
  @Test
  void theSamplesCoverEveryKindOfEvent() {
    Set<Class<?>> covered =
        Samples.everyKind().stream().map(Object::getClass).collect(Collectors.toSet());
    assertThat(covered).containsExactlyElementsIn(kinds(Event.class).collect(Collectors.toSet()));
  }

  private static Stream<Class<?>> kinds(Class<?> of) {
    Class<?>[] permitted = of.getPermittedSubclasses();
    return permitted == null ? Stream.of(of) : Arrays.stream(permitted).flatMap(k -> kinds(k));
  }

  @Test
  void everyKindComesBackAsItWas() throws Exception {
    for (Event event : Samples.everyKind()) {
      String text = JSON.writeValueAsString(EventJson.EVENTS.write(event));
      assertThat(EventJson.EVENTS.read(JSON.readTree(text))).isEqualTo(event);
    }
  }

  @Test
  void theTextIsPlainToRead() {
    assertThat(EventJson.EVENTS.write(Samples.relief(4, Which.LOWEST, 0.3, 0.35)).toString())
        .isEqualTo(
            """
            {"at":"2027-03-01T09:04:00Z","event":"read","step":"measure-relief",\
            "quantity":"relief","which":"lowest","string":"E","held":[1,17],\
            "read-at":8,"gauge-step":0.05,"mm":[0.3,0.35]}\
            """);
    Event touches = Samples.everyKind().get(7);
    assertThat(EventJson.EVENTS.write(touches).get("mm").toString()).isEqualTo("[null,0.0]");
    Event over = Samples.everyKind().get(8);
    assertThat(EventJson.EVENTS.write(over).get("mm").toString()).isEqualTo("[1.0,null]");
  }

  @Test
  void everyRequiredFieldIsMissed() {
    Set<String> optional =
        Set.of(
            "instrument",
            "kind",
            "style",
            "joint-fret",
            "which",
            "string",
            "mm",
            "value",
            "carried",
            "from",
            "by",
            "also",
            "known",
            "lesson",
            "back",
            "earlier",
            "expected",
            "freed",
            "elsewhere");
    for (Event event : Samples.everyKind()) {
      ObjectNode whole = EventJson.EVENTS.write(event);
      for (String field : (Iterable<String>) whole::fieldNames) {
        boolean recalledFeel = event instanceof Event.Recalled && field.equals("feel");
        if (optional.contains(field) || field.equals("reason") || recalledFeel) {
          continue;
        }
        JsonNode without = whole.deepCopy().without(field);
        NotAnEventException e =
            assertThrows(NotAnEventException.class, () -> EventJson.EVENTS.read(without));
        assertThat(e).hasMessageThat().contains("\"" + field + "\" is missing");
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{'at':'2027-03-01T09:00:00Z','event':'danced'}|danced\" is unknown",
        "{'at':'yesterday','event':'resumed'}|\"at\" must be a time",
        "{'at':'2027-03-01T09:00:00Z','event':'resumed','more':1}|unknown field \"more\"",
        "{'at':'2027-03-01T09:00:00Z','event':'told','step':7}|\"step\" must be text",
        "{'at':'2027-03-01T09:00:00Z','event':'offered','step':'a','turn':'x'}|must be a number",
        "{'at':'2027-03-01T09:00:00Z','event':'offered','step':'a','turn':1e999}|a number",
        "{'at':'2027-03-01T09:00:00Z','event':'turned','step':'a','turn':0,'feel':'odd'}|\"odd\"",
        "{'at':'2027-03-01T09:00:00Z','event':'recalled','step':'a','turn':0,'sure':1}|true or",
        "[1]|no JSON object",
      })
  void whatIsNoEventIsNamed(String json, String wanted) throws JsonProcessingException {
    JsonNode node = JSON.readTree(json.replace('\'', '"'));
    NotAnEventException e =
        assertThrows(NotAnEventException.class, () -> EventJson.EVENTS.read(node));
    assertThat(e).hasMessageThat().contains(wanted);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"[0.4,0.3]", "[null,null]", "[0.3]", "0.3", "[0.3,\"wide\"]"})
  void aBracketThatCanNotBeIsRefused(String mm) throws JsonProcessingException {
    ObjectNode node = EventJson.EVENTS.write(Samples.relief(4, Which.LOWEST, 0.3, 0.35));
    node.set("mm", JSON.readTree(mm));
    assertThrows(NotAnEventException.class, () -> EventJson.EVENTS.read(node));
  }

  @Test
  void infinityIsNeverWritten() {
    Event.Read odd =
        new Event.Read(
            Samples.at(0),
            "room",
            quarterturn.procedure.kind.Quantity.HUMIDITY,
            null,
            null,
            java.util.List.of(),
            0,
            1,
            null,
            Double.POSITIVE_INFINITY);
    assertThrows(IllegalArgumentException.class, () -> EventJson.EVENTS.write(odd));
  }
}
