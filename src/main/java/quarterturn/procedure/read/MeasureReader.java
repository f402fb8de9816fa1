package quarterturn.procedure.read;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch.Fork;
import quarterturn.procedure.Slip;
import quarterturn.procedure.Step;
import quarterturn.procedure.Words;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Bounds;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Scalars;

/** Reads a measure step: quantity, string, gauge and the range that is plausible. */
record MeasureReader(Faults faults, Scalars values, ForkReader forks, WordsReader words) {
  @Nullable Step read(StepReader.Begun step) {
    MappingKeys fields = step.fields();
    Node named = fields.required("quantity");
    Quantity quantity = values.word(named, "a quantity", Quantity.values());
    // Whether it must be there depends on the quantity.
    fields.optional("string");
    Node gauge = fields.required("gauge");
    Node plausible = fields.required("plausible");
    Node branches = fields.required("branches");
    Fork then = branches == null ? null : forks.fork(fields, step.what());
    Words said = step.said().with(words.shortcut(fields));
    if (quantity == null) {
      return null;
    }
    Which which = string(fields, quantity);
    Bounds bounds = BoundsReader.of(quantity);
    Double gaugeStep = values.parsed(gauge, text -> bounds.gauge(Amounts.of(quantity, text)));
    Bounds.Span range =
        values.parsed(plausible, text -> bounds.plausible(BoundsReader.span(quantity, text)));
    if (then != null) {
      immeasurable(fields, quantity, then);
    }
    if (gaugeStep == null || range == null || then == null) {
      return null;
    }
    return new Step.Measure(
        step.id(),
        said,
        step.mark(),
        quantity,
        which,
        range.least(),
        range.most(),
        gaugeStep,
        then);
  }

  private @Nullable Which string(MappingKeys fields, Quantity quantity) {
    if (!quantity.onString()) {
      if (fields.has("string")) {
        faults.add(
            Slip.UNKNOWN_KEY,
            fields.key("string"),
            quantity.word() + " is not read on a string",
            "Take it out");
      }
      return null;
    }
    return values.word(fields.required("string"), "a string", Which.values());
  }

  private void immeasurable(MappingKeys fields, Quantity quantity, Fork then) {
    if (then.branches().stream()
        .flatMap(branch -> branch.when().atoms())
        .noneMatch(atom -> notMeasured(quantity, atom))) {
      faults.add(
          Slip.OPEN_BRANCHES,
          fields.key("branches"),
          "no branch says what to do when nothing can be read",
          "Add one with when: " + quantity.word() + " " + Verdict.NOT_MEASURED.words());
    }
  }

  private static boolean notMeasured(Quantity quantity, Condition.Atom atom) {
    return atom instanceof Condition.Against against
        && against.quantity() == quantity
        && against.verdict() == Verdict.NOT_MEASURED;
  }
}
