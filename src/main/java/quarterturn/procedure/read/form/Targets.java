package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/** The places of a step, written out, that name the step to go to. */
final class Targets {
  private Targets() {}

  /** The step with every target replaced by what {@code to} makes of it. */
  static Mapping replace(Mapping step, UnaryOperator<Scalar> to) {
    Map<String, Entry> all = new LinkedHashMap<>(step.entries());
    all.replaceAll((key, entry) -> new Entry(entry.key(), value(key, entry.value(), to)));
    return new Mapping(all, step.mark());
  }

  private static Node value(String key, Node value, UnaryOperator<Scalar> to) {
    if (value instanceof Scalar scalar) {
      return key.equals(Keys.GO) || key.equals(Keys.OTHERWISE) ? to.apply(scalar) : value;
    }
    if (value instanceof Mapping ways && key.equals(Keys.FELT)) {
      Map<String, Entry> all = new LinkedHashMap<>(ways.entries());
      all.replaceAll(
          (feel, way) ->
              way.value() instanceof Scalar scalar ? new Entry(way.key(), to.apply(scalar)) : way);
      return new Mapping(all, ways.mark());
    }
    if (value instanceof Sequence list && (key.equals(Keys.OPTIONS) || key.equals(Keys.BRANCHES))) {
      List<Node> pieces = new ArrayList<>(list.items());
      pieces.replaceAll(piece -> piece instanceof Mapping one ? replace(one, to) : piece);
      return new Sequence(pieces, list.mark());
    }
    return value;
  }
}
