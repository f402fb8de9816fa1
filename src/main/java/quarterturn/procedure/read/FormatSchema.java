package quarterturn.procedure.read;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.read.form.Keys;
import quarterturn.procedure.read.yaml.MappingKeys;

/**
 * The JSON Schema (draft 2020-12) of a procedure file, for editors that complete and underline. It
 * is made from the readers' own keys and words. It takes what the readers take, in forms or written
 * out (but for values with blanks around them in quotes); what only a reading of the whole can
 * tell, such as a step that is not there or what a block asks for, it lets pass.
 */
public final class FormatSchema {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final String TURN = "turn";

  /** What a step need not say, since a form says it or something is put in its place. */
  private static final List<String> LENIENT =
      List.of(
          Keys.GO, Keys.TEXT, Keys.OPTIONS, "outcome", "procedure", "amount", "limit", Keys.FELT);

  /** What each kind of step or form is for, by its key. */
  private static final Map<String, String> MEANINGS =
      Map.ofEntries(
          Map.entry(Keys.CASES, "Asks nothing, and goes on by what is known."),
          Map.entry("tell", "Something to do or look at, confirmed when done."),
          Map.entry("choose", "One of named answers."),
          Map.entry("note", "Something to be written down in words."),
          Map.entry("pause", "A short list of values that a technician says once more."),
          Map.entry("measure", "A reading."),
          Map.entry("compute", "A calculation; asks nothing and branches on what it found."),
          Map.entry(TURN, "A turn of the truss rod."),
          Map.entry("adjust", "A screw set anew on each string out of range."),
          Map.entry("wait", "A time to let pass."),
          Map.entry("call", "Another procedure, then on by how it ended."),
          Map.entry("done", "The end, with the work done or left in order."),
          Map.entry("hand-over", "The end, with the instrument given to a repairer."));

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
    defs.set(Keys.PART, form(Keys.PART, List.of(Keys.PART)));
    defs.set(Keys.CASES, form(Keys.CASES, List.of(Keys.CASES, Keys.ID, "expects")));
    ObjectNode use = form(Keys.USE, List.of(Keys.USE, Keys.ID, Keys.THEN));
    defs.set(Keys.USE, use.put("additionalProperties", true));
    defs.set(Keys.READ, read());
    Keys.KINDS.forEach(kind -> defs.set(kind, step(kind)));
    return schema;
  }

  /**
   * An entry of the list of steps: its kind, the key that no other kind has, says which. One that
   * uses a block may have any key beside that.
   */
  private static ObjectNode entry() {
    ObjectNode entry = NODES.objectNode().put("type", "object");
    ObjectNode properties = entry.putObject("properties");
    properties.putObject(Keys.USE);
    entry.set("if", SchemaKeys.required(List.of(Keys.USE)));
    entry.set("then", SchemaKeys.ref(Keys.USE));
    ObjectNode other = entry.putObject("else");
    ArrayNode one = other.putArray("oneOf");
    Stream<String> forms = Stream.of(Keys.PART, Keys.CASES, Keys.READ);
    for (String kind : Stream.concat(forms, Keys.KINDS.stream()).toList()) {
      properties.putObject(kind);
      one.add(SchemaKeys.required(List.of(kind)));
      other.withObject("/dependentSchemas").set(kind, SchemaKeys.ref(kind));
    }
    return entry;
  }

  /** An entry that needs one key, and may have others and a condition. */
  private static ObjectNode form(String needed, List<String> others) {
    List<String> keys = new ArrayList<>(others);
    keys.addAll(List.of(Keys.ONLY_IF, Keys.UNLESS));
    ObjectNode schema = SchemaKeys.object(List.of(needed), keys);
    return schema.put("description", MEANINGS.getOrDefault(needed, ""));
  }

  private static ObjectNode read() {
    List<String> keys = new ArrayList<>(StepReader.keys("measure").asked());
    keys.removeAll(List.of("measure", "quantity", Keys.BRANCHES));
    keys.addAll(List.of(Keys.READ, Keys.ID, "agree", "again", "third", "differ", "cannot"));
    keys.add(Keys.THEN);
    return onString(form(Keys.READ, keys), Keys.READ);
  }

  private static ObjectNode step(String kind) {
    MappingKeys keys = StepReader.keys(kind);
    List<String> others = new ArrayList<>(keys.asked());
    others.set(0, Keys.THEN);
    ObjectNode schema = form(kind, others);
    keys.needed().stream()
        .filter(key -> !key.equals(kind) && !LENIENT.contains(key))
        .forEach(schema.withArray("required")::add);
    ObjectNode properties = schema.withObject("/properties");
    ObjectNode id = SchemaKeys.id("The step's id.");
    properties.set(kind, id);
    if (keys.needed().contains(Keys.TEXT)) {
      // Without an id its text stands in its place.
      properties.set(kind, SchemaKeys.of(Keys.TEXT));
      properties.set(Keys.ID, SchemaKeys.of(Keys.ID));
      ObjectNode named = schema.withObject("/dependentSchemas/text/properties");
      named.put(Keys.ID, false).set(kind, id);
    }
    if (others.containsAll(ForkReader.KEYS)) {
      schema.set("not", SchemaKeys.required(List.of(Keys.GO, Keys.BRANCHES)));
    }
    switch (kind) {
      case "choose" -> {
        properties.set(Keys.ANSWERS, SchemaKeys.of(Keys.ANSWERS));
        schema.putObject("if").set("not", SchemaKeys.required(List.of(Keys.ANSWERS)));
        schema.set("then", SchemaKeys.required(List.of(Keys.OPTIONS)));
      }
      case "measure" -> onString(schema, "quantity");
      case TURN -> turn(schema, id);
      default -> {}
    }
    return schema;
  }

  /** Lets a turn be a form, which need not say what a turn that is written out must. */
  private static void turn(ObjectNode turn, ObjectNode id) {
    turn.withObject("/properties").set(TURN, SchemaKeys.of(TURN));
    turn.withArray("required").add(Keys.TEXT);
    turn.withObject("/if/properties").set(TURN, id);
    turn.set("then", SchemaKeys.required(List.of("amount", "limit", Keys.FELT)));
    ObjectNode written = turn.withObject("/then/properties").put(Keys.ID, false);
    written.putObject(Keys.FELT).put("minProperties", Feel.values().length);
    turn.remove("dependentSchemas");
  }

  /** Requires a string for a quantity that is read on one, and forbids it for any other. */
  private static ObjectNode onString(ObjectNode reading, String key) {
    ObjectNode some = SchemaKeys.words("Read on a string.", SchemaKeys.onString());
    reading.withObject("/if/properties").set(key, some);
    reading.set("then", SchemaKeys.required(List.of("string")));
    reading.putObject("else").set("not", SchemaKeys.required(List.of("string")));
    return reading;
  }
}
