package quarterturn.script;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import quarterturn.lesson.student.Gate;
import quarterturn.session.Question;
import quarterturn.unit.Printable;

/** A question that is not a session's prompt as one JSON object. */
final class QuestionJson {
  private QuestionJson() {}

  /**
   * The object.
   *
   * @param secret whether others are not to see what is answered
   */
  static ObjectNode of(Question question, boolean secret) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("prompt", "question");
    json.put("kind", question.kind());
    json.put("title", question.title());
    list(json, "lines", question.lines());
    if (question instanceof Question.Asked asked) {
      json.put("asks", Printable.of(asked.asks()));
      json.put("hidden", secret || asked.hidden());
      json.put("ponder_seconds", asked.ponder() ? Gate.QUESTION_PAUSE.toSeconds() : 0);
    }
    if (question instanceof Question.Choose choose) {
      list(json, "options", choose.options().stream().map(Question.Option::name).toList());
      if (choose.listed()) {
        listed(json.putArray("listed"), choose.options());
      }
    }
    if (question instanceof Question.Number number) {
      json.put("unit", number.unit());
    }
    if (question instanceof Question.Rows rows) {
      json.put("unit", rows.unit());
      rows(json.putArray("rows"), rows.rows());
    }
    if (question instanceof Question.Form form) {
      json.put("at", form.at());
      fields(json.putArray("fields"), form.fields());
    }
    json.put("help", question.help());
    return json;
  }

  private static void rows(ArrayNode array, List<Question.Row> rows) {
    for (Question.Row row : rows) {
      array
          .addObject()
          .put("row", row.number())
          .put("name", Printable.of(row.name()))
          .put("done", row.done());
    }
  }

  private static void fields(ArrayNode array, List<Question.Field> fields) {
    for (Question.Field field : fields) {
      array
          .addObject()
          .put("label", field.label())
          .put("meaning", Printable.of(field.meaning()))
          .put("held", Printable.of(field.held()));
    }
  }

  private static void listed(ArrayNode array, List<Question.Option> options) {
    for (Question.Option option : options) {
      array
          .addObject()
          .put("name", Printable.of(option.name()))
          .put("label", Printable.of(option.label()))
          .put("detail", Printable.of(option.detail()))
          .put("group", option.group());
    }
  }

  static ObjectNode list(ObjectNode json, String key, List<String> texts) {
    ArrayNode array = json.putArray(key);
    texts.forEach(text -> array.add(Printable.of(text)));
    return json;
  }
}
