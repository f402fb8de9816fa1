package quarterturn.lesson.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import quarterturn.lesson.Value;
import quarterturn.session.journal.Fields;
import quarterturn.session.journal.NotAnEventException;
import quarterturn.session.journal.ObjectJson;
import quarterturn.session.journal.Shapes;

/** A value as fields: a gap as two bounds, a number with its unit, a turn, or nothing. */
final class ValueJson implements ObjectJson<Value> {
  private static final Shapes SHAPES = new Shapes();
  private static final ObjectJson<Value.Gap> GAP = SHAPES.record(Value.Gap.class, "mm");
  private static final ObjectJson<Value.Number> NUMBER =
      SHAPES.record(Value.Number.class, "value unit");
  private static final ObjectJson<Value.Rod> ROD = SHAPES.record(Value.Rod.class, "turn");

  @Override
  public void write(ObjectNode out, Value value) {
    if (value instanceof Value.Gap gap) {
      GAP.write(out, gap);
    } else if (value instanceof Value.Number number) {
      NUMBER.write(out, number);
    } else if (value instanceof Value.Rod rod) {
      ROD.write(out, rod);
    }
  }

  @Override
  public Value read(Fields fields) throws NotAnEventException {
    if (fields.has("mm")) {
      return GAP.read(fields);
    } else if (fields.has("value")) {
      return NUMBER.read(fields);
    }
    return fields.has("turn") ? ROD.read(fields) : Value.NONE;
  }
}
