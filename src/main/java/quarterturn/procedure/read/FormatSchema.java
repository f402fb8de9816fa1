package quarterturn.procedure.read;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.form.Keys;
import quarterturn.procedure.read.yaml.MappingKeys;

/**
 * The JSON Schema (draft 2020-12) of a procedure file, for editors that complete and underline. It
 * is made from the readers' own keys and words. It takes what the readers take (but for values with
 * blanks around them in quotes); what only a reading of the whole can tell, such as a step that is
 * not there, it lets pass.
 */
public final class FormatSchema {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final String PART = "part";

  /** What each kind of step is for, by its key. */
  private static final Map<String, String> MEANINGS =
      Map.ofEntries(
          Map.entry("tell", "Something to do or look at, confirmed when done."),
          Map.entry("choose", "One of named answers."),
          Map.entry("note", "Something to be written down in words."),
          Map.entry("pause", "A short list of values that a technician says once more."),
          Map.entry("measure", "A reading."),
          Map.entry("compute", "A calculation; asks nothing and branches on what it found."),
          Map.entry("turn", "A turn of the truss rod."),
          Map.entry("adjust", "A screw set anew on each string out of its window."),
          Map.entry("wait", "A time to let pass."),
          Map.entry("call", "Another procedure, then on by how it ended."),
          Map.entry("done", "The end, with the work done or left in order."),
          Map.entry("hand-over", "The end, with the instrument given to a repairer."));

  private static final String TEXT = "text";

  private FormatSchema() {}

  /** The schema as text, indented, with a line break at its end. */
  public static String text() {
    return schema().toPrettyString().replace(System.lineSeparator(), "\n") + "\n";
  }

  private static ObjectNode schema() {
    ObjectNode schema = NODES.objectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", "A procedure of quarterturn");
    MappingKeys keys = ProcedureReader.keys();
    List<String> needed = new ArrayList<>(keys.needed());
    needed.remove(Keys.BEGIN);
    schema.setAll(SchemaKeys.object(needed, keys.asked()));
    ObjectNode defs = schema.putObject("$defs");
    defs.set("entry", entry());
    defs.set("ask", SchemaKeys.question());
    defs.set(PART, SchemaKeys.object(List.of(PART), List.of(PART, Keys.ONLY_IF)));
    Keys.KINDS.forEach(kind -> defs.set(kind, step(kind)));
    defs.set(Keys.CASES, cases());
    return schema;
  }

  /** An entry of the list of steps: its kind, the key that no other kind has, says which. */
  private static ObjectNode entry() {
    ObjectNode entry = NODES.objectNode();
    entry.put("type", "object");
    ObjectNode properties = entry.putObject("properties");
    ArrayNode one = entry.putArray("oneOf");
    ArrayNode all = entry.putArray("allOf");
    Stream<String> forms = Stream.of(PART, Keys.CASES);
    for (String kind : Stream.concat(forms, Keys.KINDS.stream()).toList()) {
      properties.putObject(kind);
      one.add(required(kind));
      ObjectNode choice = all.addObject();
      choice.set("if", required(kind));
      choice.putObject("then").put("$ref", "#/$defs/" + kind);
    }
    return entry;
  }

  private static ObjectNode required(String key) {
    ObjectNode schema = NODES.objectNode();
    schema.putArray("required").add(key);
    return schema;
  }

  private static ObjectNode step(String kind) {
    MappingKeys keys = StepReader.keys(kind);
    List<String> asked = keys.asked();
    List<String> lenient = List.of(Keys.GO, TEXT);
    List<String> needed = keys.needed().stream().filter(key -> !lenient.contains(key)).toList();
    ObjectNode schema = SchemaKeys.object(needed, asked.subList(1, asked.size()));
    schema.withObject("/properties").set(kind, SchemaKeys.id("The step's id."));
    if (keys.needed().contains(TEXT)) {
      // Without an id its text stands in its place.
      schema.withObject("/properties").set(kind, SchemaKeys.of(TEXT));
      ArrayNode either = schema.putArray("oneOf");
      ObjectNode named = either.addObject();
      named.putArray("required").add(TEXT);
      named.withObject("/properties").set(kind, SchemaKeys.id("The step's id."));
      either.addObject().putObject("not").putArray("required").add(TEXT);
    }
    schema.put("description", MEANINGS.getOrDefault(kind, ""));
    if (asked.containsAll(ForkReader.KEYS)) {
      ArrayNode both = schema.putObject("not").putArray("required");
      ForkReader.KEYS.forEach(both::add);
    }
    if (kind.equals("measure")) {
      onString(schema);
    }
    return schema;
  }

  private static ObjectNode cases() {
    ObjectNode schema = SchemaKeys.object(List.of(Keys.CASES), List.of(Keys.CASES, "expects"));
    schema.put("description", "Asks nothing, and goes on by what is known.");
    return schema;
  }

  /** Requires a string for a quantity that is read on one, and forbids it for any other. */
  private static void onString(ObjectNode measure) {
    ObjectNode quantity = measure.putObject("if").putObject("properties").putObject("quantity");
    ArrayNode words = quantity.putArray("enum");
    Arrays.stream(Quantity.values())
        .filter(Quantity::onString)
        .map(Quantity::word)
        .forEach(words::add);
    measure.putObject("then").putArray("required").add("string");
    measure.putObject("else").putObject("not").putArray("required").add("string");
  }
}
