package quarterturn.procedure.read;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;

/** Reads a pause: a short list of values that a technician says once more. */
record PauseReader(Faults faults, Scalars values, ForkReader forks) {
  @Nullable Step read(StepReader.Begun step) {
    Node list = step.fields().required("lines");
    List<Step.Line> lines = values.each(list, this::line);
    List<Node> items = list instanceof Node.Sequence sequence ? sequence.items() : List.of();
    int written = items.size();
    if (list != null && (written == 0 || written > Step.Pause.MOST_LINES)) {
      faults.value(
          list.mark(),
          "a pause with " + written + " lines",
          "Give it one line at least, and at most " + Step.Pause.MOST_LINES);
    }
    if (list != null && texts(items).distinct().count() < texts(items).count()) {
      faults.value(list.mark(), "a pause that has one line twice", "Take one of them out");
    }
    Scalar go = forks.way(step.fields().required("go"));
    return go == null
        ? null
        : new Step.Pause(step.id(), step.said(), step.mark(), lines, go.text());
  }

  private static Stream<String> texts(List<Node> items) {
    return items.stream()
        .filter(Node.Scalar.class::isInstance)
        .map(Node.Scalar.class::cast)
        .map(Node.Scalar::text);
  }

  private Step.@Nullable Line line(Node item) {
    Scalar scalar = values.scalar(item);
    if (scalar == null) {
      return null;
    }
    String text = scalar.text();
    if (text.equals(Step.Line.OfDirection.WORD)) {
      return new Step.Line.OfDirection();
    }
    String[] parts = text.split(" ", -1);
    if (parts.length == 1) {
      forks.references().answered(scalar);
      return new Step.Line.OfChoice(text);
    }
    for (Quantity quantity : Quantity.values()) {
      for (Which which : List.of(Which.LOWEST, Which.HIGHEST)) {
        if (quantity.onString() && text.equals(quantity.word() + " " + which.word())) {
          return new Step.Line.OfReading(quantity, which);
        }
      }
    }
    faults.value(
        scalar.mark(),
        Quote.of(text) + " is no line of a pause",
        "Write direction, a reading such as relief lowest, or the id of a choose step");
    return null;
  }
}
