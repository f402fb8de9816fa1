package quarterturn.procedure.read;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.Blank;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Picture;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Shortcut;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.procedure.read.form.Keys;
import quarterturn.unit.Worded;

/**
 * The schema, with a description, of what may stand under each key of a procedure file. A key means
 * the same wherever it stands.
 */
final class SchemaKeys {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final String UNIT = "(mm|in|thou|%|cents?|C)";
  private static final String TURN = "\\S.*(turns?|deg)";

  private SchemaKeys() {}

  /** The schema of the value of {@code key}, one of those that the readers know. */
  static ObjectNode of(String key) {
    return switch (key) {
      case "procedure" -> id("A procedure's name: the one of this file, or the one to call.");
      case "revision" -> revision();
      case "title" -> line("Shown as the stage.");
      case "purpose" -> line("What it is for, one sentence.");
      case "tools" -> list(line("One tool."), "What to have at hand.");
      case "needs" -> list(id("A result."), "Results that must be fresh before it begins.");
      case "begin" -> id("The step to begin with; without it, the first.");
      case "retune" -> id("The step that brings the strings to pitch; without it, the first.");
      case "reread" ->
          id("The step that takes one reading again after a break; without it, the first.");
      case "steps" -> steps();
      case "part" -> line("The part of the work that the steps below belong to.");
      case Keys.ONLY_IF -> line("The condition on which this part is gone through.");
      case "text" ->
          text("What the beginner is told: the condition before the action, one action.");
      case "brief" -> text("The technician's wording.");
      case "why" -> text("The reason, for whoever asks.");
      case "ask" -> ask();
      case "predict" -> text("A question to think about before the reading or turn.");
      case "idea" -> text("Asked afterwards: a changed case, which a wrong idea answers wrongly.");
      case "check" -> text("Asked afterwards: answered by a number or a reason.");
      case "question" -> text("The same as predict.");
      case "about" -> id("The step whose result answers it.");
      case "answer" -> text("What a good answer says.");
      case "wrong" ->
          list(
              object(List.of("says", "but"), List.of("says", "but")),
              "Wrong ideas that learners bring along.");
      case "says" -> text("A wrong idea, in a learner's words.");
      case "but" -> text("What speaks against it.");
      case "hazards" ->
          list(id("A hazard of safety/hazards.yaml."), "Shown right before the step.");
      case "never-skip" -> truth("Whether no role may pass over it.");
      case "picture" -> word("What is drawn beside it.", Picture.values());
      case "expects" -> expects();
      case "when" -> condition("When this way is taken.");
      case "go" -> id("The step to go to; without it, the next that stands below.");
      case "otherwise" -> id("The step that comes next where no branch above holds; the last.");
      case "branches", Keys.CASES -> branches();
      case "establishes" -> list(fact(), "What is so once it is confirmed.");
      case "changes" -> id("The change it makes to the instrument, of procedures/results.yaml.");
      case "gives" -> id("The result that is given here, of procedures/results.yaml.");
      case "records" ->
          word("What is put on record, where the program asks for it again.", Recorded.values());
      case "options" -> options();
      case "is" -> id("The option's name, for conditions.");
      case "label" -> pattern(text("The answer as it is shown, one line."), filled("\\n"));
      case "what" -> word("What is set anew.", Adjustment.values());
      case "quantity" -> word("What is measured.", Quantity.values());
      case "string" -> word("On which string.", Which.values());
      case "gauge" -> amount("The gauge's step with its unit: 0.05 mm.", "^\\S.*" + UNIT + "$");
      case "plausible" ->
          amount("The range of what can be true: 0..3 mm.", "^\\S.*\\.\\..*\\S\\s*" + UNIT + "$");
      case "calculation" -> calculation();
      case "amount" ->
          amount(
              "How far: advised, undo, or for example tighten 1/8 turn.",
              "^(advised|undo|(tighten|loosen) " + TURN + ")$");
      case "limit" -> amount("At most this far: 1/4 turn or less.", "^" + TURN + "$");
      case "felt" -> felt();
      case "for" -> amount("How long: 10 min, 24 h, 2 days.", "^[0-9]{1,4} ?(min|h|days?)$");
      case "short" ->
          word("What becomes of it on a technician's short path.", Shortcut.Way.values());
      case "short-when" -> condition("When that is so; without it, always.");
      case "lines" -> lines();
      case "rest" -> truth("Whether this is the daily rest.");
      case "outcome" -> id("How it ends, for the procedure that calls this one.");
      default -> throw new IllegalArgumentException("no schema for the key " + key);
    };
  }

  /** The schema of a mapping with {@code keys}, each by {@link #of}, and no others. */
  static ObjectNode object(List<String> required, List<String> keys) {
    ObjectNode object = NODES.objectNode();
    object.put("type", "object");
    ArrayNode needed = object.putArray("required");
    required.forEach(needed::add);
    ObjectNode properties = object.putObject("properties");
    keys.forEach(key -> properties.set(key, of(key)));
    object.put("additionalProperties", false);
    return object;
  }

  /** The schema of an id; one that is all digits, or "true", is no text to an editor. */
  static ObjectNode id(String description) {
    return pattern(scalar(description), "^[a-z0-9-]{1,40}$");
  }

  private static ObjectNode described(String description) {
    return NODES.objectNode().put("description", description);
  }

  private static ObjectNode scalar(String description) {
    ObjectNode schema = described(description);
    schema.putArray("type").add("string").add("number").add("boolean");
    return schema;
  }

  private static ObjectNode pattern(ObjectNode schema, String pattern) {
    return schema.put("pattern", pattern);
  }

  private static ObjectNode amount(String description, String pattern) {
    return pattern(described(description).put("type", "string"), pattern);
  }

  private static ObjectNode line(String description) {
    return pattern(scalar(description), "^[^{}\\n]*[^{}\\s][^{}\\n]*\\s*$");
  }

  private static ObjectNode text(String description) {
    String blanks =
        Arrays.stream(Blank.values())
            .map(blank -> "{" + blank.word() + "} " + blank.meaning())
            .collect(Collectors.joining("; "));
    return pattern(scalar(description + " Filled in: " + blanks + "."), filled(""));
  }

  /**
   * A regular expression for text that is not empty, has none of the characters {@code without},
   * and in which every brace belongs to a blank.
   */
  private static String filled(String without) {
    String words = String.join("|", Worded.words(Blank.values()));
    String plain = "[^{}" + without + "]*";
    return "^(?=[\\s\\S]*\\S)" + plain + "(\\{(" + words + ")\\}" + plain + ")*\\s*$";
  }

  private static ObjectNode truth(String description) {
    ObjectNode schema = described(description);
    schema.putArray("enum").add(true).add(false).add("true").add("false");
    return schema;
  }

  private static ObjectNode calculation() {
    ObjectNode schema = described("What is worked out; it follows from the conditions.");
    StepReader.CALCULATIONS.forEach(schema.putArray("enum")::add);
    return schema;
  }

  private static ObjectNode word(String description, Worded... all) {
    ObjectNode schema = described(description);
    ArrayNode words = schema.putArray("enum");
    Worded.words(all).forEach(words::add);
    return schema;
  }

  private static ObjectNode list(ObjectNode items, String description) {
    ObjectNode schema = described(description);
    schema.put("type", "array");
    schema.set("items", items);
    return schema;
  }

  private static ObjectNode revision() {
    ObjectNode schema = described("Counts its author's changes, from 1.");
    schema.putArray("type").add("integer").add("string");
    schema.put("minimum", 1).put("maximum", 999_999);
    return pattern(schema, "^0{0,3}[1-9][0-9]{0,5}$");
  }

  private static ObjectNode condition(String description) {
    ObjectNode schema = described(description + " For example: relief touches or below target.");
    schema.put("type", "string");
    schema.put("minLength", 1).put("maxLength", 400);
    return schema;
  }

  private static ObjectNode expects() {
    String holds = "What must hold whenever the step is reached";
    ObjectNode schema = described(holds + ": a condition, or several of which one must.");
    schema
        .putArray("anyOf")
        .add(condition(holds + "."))
        .add(
            list(condition("One of them."), "Conditions of which one must hold.")
                .put("minItems", 1));
    return schema;
  }

  private static ObjectNode fact() {
    String meanings =
        Arrays.stream(Fact.values())
            .map(fact -> fact.word() + ": " + fact.meaning())
            .collect(Collectors.joining("; "));
    return word("A fact. " + meanings + ".", Fact.values());
  }

  private static ObjectNode ask() {
    return list(NODES.objectNode().put("$ref", "#/$defs/ask"), "The teacher's questions.");
  }

  /** The schema of a question by itself, or under the key of its kind. */
  static ObjectNode question() {
    ObjectNode question = described("A question for a lesson.");
    ArrayNode any = question.putArray("anyOf").add(of("question"));
    for (String kind : AskReader.KINDS) {
      List<String> keys = new ArrayList<>(List.of(kind));
      keys.addAll(List.of("about", "answer", "wrong"));
      any.add(object(List.of(kind), keys));
    }
    return question;
  }

  private static ObjectNode branches() {
    ObjectNode item = NODES.objectNode();
    item.put("type", "object");
    item.putArray("oneOf")
        .add(object(List.of("when"), List.of("when", "go")))
        .add(object(List.of("otherwise"), List.of("otherwise")));
    return list(item, "The ways on: the first whose condition holds.").put("minItems", 1);
  }

  private static ObjectNode options() {
    ObjectNode option =
        object(List.of("is", "label"), List.of("is", "label", "establishes", "changes", "go"));
    return list(option, "The answers, the ordinary one first.").put("minItems", 2);
  }

  private static ObjectNode felt() {
    ObjectNode felt = described("Where each feel of the rod nut leads.");
    felt.put("type", "object");
    ArrayNode required = felt.putArray("required");
    ObjectNode properties = felt.putObject("properties");
    for (Feel feel : Feel.values()) {
      required.add(feel.word());
      properties.set(feel.word(), id(feel.label() + "."));
    }
    felt.put("additionalProperties", false);
    return felt;
  }

  private static ObjectNode lines() {
    String readings = alternatives(Quantity.values(), Quantity::onString, Quantity::word);
    String strings = alternatives(Which.values(), which -> which != Which.EACH, Which::word);
    ObjectNode line =
        pattern(
            scalar("direction, relief lowest, or the id of a step with a choice."),
            "^([a-z0-9-]{1,40}|(" + readings + ") (" + strings + "))$");
    return list(line, "What a technician says once more, by its value.")
        .put("minItems", 1)
        .put("maxItems", Step.Pause.MOST_LINES);
  }

  private static <T> String alternatives(T[] all, Predicate<T> which, Function<T, String> word) {
    return Arrays.stream(all).filter(which).map(word).collect(Collectors.joining("|"));
  }

  private static ObjectNode steps() {
    ObjectNode item = NODES.objectNode().put("$ref", "#/$defs/entry");
    return list(item, "The steps, each under the part of the work that it belongs to.")
        .put("minItems", 1);
  }
}
