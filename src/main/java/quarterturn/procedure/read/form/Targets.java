package quarterturn.procedure.read.form;

import java.util.function.UnaryOperator;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/** The places of a step, written out, that name the step to go to. */
final class Targets {
  private Targets() {}

  /** The step with every target replaced by what {@code to} makes of it. */
  static Mapping replace(Mapping step, UnaryOperator<Scalar> to) {
    return step.each(
        (key, value) ->
            switch (key) {
              case Keys.GO, Keys.OTHERWISE -> scalar(value, to);
              case Keys.FELT ->
                  value instanceof Mapping ways ? ways.each((feel, way) -> scalar(way, to)) : value;
              case Keys.OPTIONS, Keys.BRANCHES ->
                  value instanceof Sequence list
                      ? list.each(piece -> piece instanceof Mapping one ? replace(one, to) : piece)
                      : value;
              default -> value;
            });
  }

  private static Node scalar(Node value, UnaryOperator<Scalar> to) {
    return value instanceof Scalar scalar ? to.apply(scalar) : value;
  }
}
