package quarterturn.procedure.read;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
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

  /** What may stand under an option; an answer has its own name for a key beside these. */
  private static final List<String> OPTION =
      List.of("is", "label", "establishes", "changes", Keys.GO);

  private static final String ID = "[a-z0-9-]{1,40}";

  /** A step, what stands below, or the name of a part. */
  private static final String TARGET =
      "^(" + ID + "|" + Keys.GO_ON + "|[A-Z][A-Za-z0-9 ,'-]{0,60})$";

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
      case "reread" -> id("The step that reads again after a break; without it, the first.");
      case Keys.STEPS -> list(ref("entry"), "The steps, each under its part.").put("minItems", 1);
      case "part" -> line("The part of the work that the steps below belong to.");
      case Keys.ONLY_IF, Keys.UNLESS -> condition("When this is gone through, or passed over.");
      case Keys.ID -> id("The step's id; without it, one is made.");
      case Keys.USE -> id("The block that stands here, of procedures/blocks.");
      case "turn" ->
          amount(
              "rod, as advised, or rod, taken back, or rod, set back; or the step's id.",
              "^(rod, (as advised|taken back|set back)|" + ID + ")$");
      case "agree" -> amount("How near a second one must come.", "^within \\S.*" + UNIT + "$");
      case "again", "third" -> described("What is said of that reading.").put("type", "object");
      case "differ" -> target("The step to go to where the readings differ.");
      case "cannot" -> pattern(described("Where it leads, or what is asked."), TARGET);
      case Keys.TEXT ->
          text("What the beginner is told: the condition before the action, one action.");
      case "brief" -> text("The technician's wording.");
      case "why" -> text("The reason, for whoever asks.");
      case "ask" -> list(ref("ask"), "The teacher's questions.");
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
      case "hazards" -> list(id("A hazard of safety/hazards.yaml."), "Shown before the step.");
      case "never-skip" -> truth("Whether no role may pass over it.");
      case "picture" -> word("What is drawn beside it.", Picture.values());
      case "expects" -> expects();
      case "when" -> condition("When this way is taken.");
      case Keys.GO -> target("The step to go to; without it, the next that stands below.");
      case "otherwise" -> target("The step that comes next where no branch above holds; the last.");
      case "branches", Keys.CASES, Keys.THEN -> branches();
      case "establishes" -> list(fact(), "What is so once it is confirmed.");
      case "changes" -> id("The change it makes to the instrument, of procedures/results.yaml.");
      case "gives" -> id("The result that is given here, of procedures/results.yaml.");
      case "records" ->
          word("What is put on record, where the program asks for it again.", Recorded.values());
      case Keys.OPTIONS ->
          list(object(List.of("is", "label"), OPTION), "The answers, the ordinary one first.")
              .put("minItems", 2);
      case Keys.ANSWERS -> answers();
      case "is" -> id("The option's name, for conditions.");
      case "label" -> pattern(text("The answer as it is shown, one line."), filled("\\n"));
      case "what" -> word("What is set anew.", Adjustment.values());
      case "quantity", Keys.READ -> word("What is measured.", Quantity.values());
      case "string" -> word("On which string.", Which.values());
      case "gauge" -> amount("The gauge's step with its unit: 0.05 mm.", "^\\S.*" + UNIT + "$");
      case "plausible" ->
          amount("The range of what can be true: 0..3 mm.", "^\\S.*\\.\\..*\\S\\s*" + UNIT + "$");
      case "calculation" ->
          words("What is worked out; it follows from the conditions.", StepReader.CALCULATIONS);
      case "amount" ->
          amount(
              "How far: advised, undo, or for example tighten 1/8 turn.",
              "^(advised|undo|(tighten|loosen) " + TURN + ")$");
      case "limit" -> amount("At most this far: 1/4 turn or less.", "^" + TURN + "$");
      case "felt" -> felt();
      case "meanwhile" -> text("What may be done until it is over.");
      case "for" -> amount("How long: 10 min, 24 h, 2 days.", "^[0-9]{1,4} ?(min|h|days?)$");
      case "short" ->
          word(
              "What becomes of it on the short path, or (once) where it gives nothing new.",
              Shortcut.Way.values());
      case "short-when" -> condition("When that is so; without it, always.");
      case "lines" -> lines();
      case "rest" -> truth("Whether this is the daily rest.");
      case "outcome" -> id("How it ends, for the procedure that calls this one.");
      default -> throw new IllegalArgumentException("no schema for the key " + key);
    };
  }

  /** The schema of a mapping with {@code keys}, each by {@link #of}, and no others. */
  static ObjectNode object(List<String> required, List<String> keys) {
    ObjectNode object = required(required).put("type", "object").put("additionalProperties", false);
    ObjectNode properties = object.putObject("properties");
    keys.forEach(key -> properties.set(key, of(key)));
    return object;
  }

  /** The schema of any mapping that has all of {@code keys}. */
  static ObjectNode required(List<String> keys) {
    ObjectNode schema = NODES.objectNode();
    keys.forEach(schema.putArray("required")::add);
    return schema;
  }

  /** The schema of an id; one that is all digits, or "true", is no text to an editor. */
  static ObjectNode id(String description) {
    return pattern(scalar(description), "^" + ID + "$");
  }

  /** The schema of a way on. */
  private static ObjectNode target(String description) {
    return pattern(scalar(description), TARGET);
  }

  /** What stands under a name in the schema's definitions. */
  static ObjectNode ref(String name) {
    return NODES.objectNode().put("$ref", "#/$defs/" + name);
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

  private static ObjectNode word(String description, Worded... all) {
    return words(description, Worded.words(all));
  }

  static ObjectNode words(String description, List<String> words) {
    ObjectNode schema = described(description);
    words.forEach(schema.putArray("enum")::add);
    return schema;
  }

  private static ObjectNode list(ObjectNode items, String description) {
    ObjectNode schema = described(description).put("type", "array");
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
    return schema.put("type", "string").put("minLength", 1).put("maxLength", 400);
  }

  private static ObjectNode expects() {
    ObjectNode schema = condition("What must hold when it is reached: this, or one of several.");
    schema.putArray("type").add("string").add("array");
    schema.set("items", condition("One of them."));
    return schema.put("minItems", 1);
  }

  private static ObjectNode fact() {
    String meanings =
        Arrays.stream(Fact.values())
            .map(fact -> fact.word() + ": " + fact.meaning())
            .collect(Collectors.joining("; "));
    return word("A fact. " + meanings + ".", Fact.values());
  }

  /** The schema of a question by itself, or under the key of its kind. */
  static ObjectNode question() {
    ObjectNode question = described("A question for a lesson.");
    ArrayNode any = question.putArray("anyOf").add(of("question"));
    AskReader.KINDS.forEach(
        kind -> any.add(object(List.of(kind), List.of(kind, "about", "answer", "wrong"))));
    return question;
  }

  private static ObjectNode branches() {
    ObjectNode item = object(List.of(), List.of("when", Keys.GO, "otherwise"));
    item.set("additionalProperties", target("The step to go to when that is so."));
    ArrayNode either = item.put("minProperties", 1).putArray("anyOf");
    either.addObject().put("maxProperties", 1);
    either.add(required(List.of("when", Keys.GO)).put("maxProperties", 2));
    return list(item, "The ways on: the first whose condition holds.").put("minItems", 1);
  }

  /** Answers under their own names, which may lead on by an arrow. */
  private static ObjectNode answers() {
    ObjectNode answer = object(List.of(), OPTION);
    String name = "^(?!(" + String.join("|", OPTION) + ")$)" + ID + "$";
    answer.withObject("/patternProperties").set(name, of("label"));
    answer.withObject("/properties").set(Keys.NOT_SURE, target("Where that leads."));
    // One that is not sure may stand by itself; one with a name has no other name beside it.
    answer.putArray("type").add("object").add("string");
    ArrayNode either = pattern(answer, "^" + Keys.NOT_SURE + "$").putArray("anyOf");
    either.addObject().put("minProperties", 1).put("maxProperties", 1);
    OPTION.forEach(key -> either.add(required(List.of(key))));
    return list(answer, "The answers, the ordinary one first.").put("minItems", 2);
  }

  private static ObjectNode felt() {
    ObjectNode felt = described("Where each feel of the truss rod nut leads.");
    felt.put("type", "object").put("additionalProperties", false);
    ObjectNode properties = felt.putObject("properties");
    for (Feel feel : Feel.values()) {
      properties.set(feel.word(), target(feel.label() + "."));
    }
    return felt;
  }

  /** The words of the quantities that are read on a string. */
  static List<String> onString() {
    return Arrays.stream(Quantity.values()).filter(Quantity::onString).map(Quantity::word).toList();
  }

  private static ObjectNode lines() {
    ObjectNode line =
        pattern(
            scalar("direction, relief lowest, or the id of a step with a choice."),
            "^(" + ID + "|(" + String.join("|", onString()) + ") (lowest|highest))$");
    return list(line, "What a technician says once more, by its value.")
        .put("minItems", 1)
        .put("maxItems", Step.Pause.MOST_LINES);
  }
}
