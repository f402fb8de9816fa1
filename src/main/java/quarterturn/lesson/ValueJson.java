package quarterturn.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.jspecify.annotations.Nullable;
import quarterturn.session.BracketJson;
import quarterturn.session.Fields;
import quarterturn.session.NotAnEvent;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** A value as a JSON object: a gap as two bounds, a number with its unit, a turn, or nothing. */
final class ValueJson {
  private ValueJson() {}

  static ObjectNode write(Value value) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    if (value instanceof Value.Gap gap) {
      BracketJson.write(out, "mm", gap.bracket());
    } else if (value instanceof Value.Number number) {
      out.put("value", number.value()).put("unit", number.unit());
    } else if (value instanceof Value.Rod rod) {
      out.put("turn", rod.turn().turns());
    }
    return out;
  }

  static Value read(JsonNode node) throws NotAnEvent {
    Fields f = new Fields(node);
    Bracket bracket = f.bracketOrNull("mm");
    Double number = f.numberOrNull("value");
    Double turn = f.numberOrNull("turn");
    Value value =
        bracket != null
            ? new Value.Gap(bracket)
            : number != null
                ? new Value.Number(number, f.text("unit"))
                : turn != null ? new Value.Rod(new Turn(turn)) : Value.NONE;
    f.nothingElse();
    return value;
  }

  static @Nullable Value readOrNull(Fields f, String name) throws NotAnEvent {
    return f.has(name) ? read(f.object(name)) : null;
  }
}
