package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Quote;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.procedure.read.Node.Scalar;

/** Reads a pause: a short list of values that a technician says once more. */
record PauseReader(Scalars values, ForkReader forks, References references) {
  @Nullable Step read(StepReader.Begun step) {
    List<Step.Line> lines = new ArrayList<>();
    Node list = step.fields().required("lines");
    List<Node> items = values.items(list);
    for (Node item : items) {
      Scalar scalar = values.scalar(item);
      Step.Line line = scalar == null ? null : line(scalar);
      if (line != null) {
        lines.add(line);
      }
    }
    if (list != null && (items.isEmpty() || items.size() > Step.Pause.MOST_LINES)) {
      values
          .faults()
          .value(
              list.mark(),
              "a pause with " + items.size() + " lines",
              "Give it one line at least, and at most " + Step.Pause.MOST_LINES);
    }
    Scalar go = forks.way(step.fields().required("go"));
    return go == null
        ? null
        : new Step.Pause(step.id(), step.said(), step.mark(), lines, go.text());
  }

  private Step.@Nullable Line line(Scalar scalar) {
    String text = scalar.text();
    if (text.equals(Step.Line.OfDirection.WORD)) {
      return new Step.Line.OfDirection();
    }
    String[] parts = text.split(" ", -1);
    if (parts.length == 1) {
      references.answered(scalar);
      return new Step.Line.OfChoice(text);
    }
    for (Quantity quantity : Quantity.values()) {
      for (Which which : List.of(Which.LOWEST, Which.HIGHEST)) {
        if (quantity.onString() && text.equals(quantity.word() + " " + which.word())) {
          return new Step.Line.OfReading(quantity, which);
        }
      }
    }
    values
        .faults()
        .value(
            scalar.mark(),
            Quote.of(text) + " is no line of a pause",
            "Write direction, a reading such as relief lowest, or the id of a choose step");
    return null;
  }
}
