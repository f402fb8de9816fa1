package quarterturn.procedure.check.rule;

import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.check.walk.Reachability;
import quarterturn.procedure.check.words.Act;
import quarterturn.procedure.kind.Quantity;

/** The rule that a reading is taken so that it counts. */
public final class UncountedReading {
  public static final Rule RULE =
      Rule.ofSteps(
          "uncounted-reading",
          "A string is read at pitch, and relief only once the neck has settled.",
          UncountedReading::prove);

  private UncountedReading() {}

  private static void prove(Proof proof, Step step, Findings found) {
    boolean eases = proof.said(step).stream().anyMatch(s -> s.order().act() == Act.EASE_STRING);
    if (eases && (read(step) || untuned(proof, step))) {
      found.add(
          step,
          "a string that " + step.id() + " lets down can be read off pitch",
          "let a step that establishes at-pitch come between");
    }
    if (step instanceof Step.Measure measure && measure.quantity().onString()) {
      proof.paths().at(step.id()).forEach(node -> counts(proof, measure, node, found));
    }
  }

  private static boolean read(Step step) {
    return step instanceof Step.Measure measure && measure.quantity().onString();
  }

  private static boolean untuned(Proof proof, Step step) {
    return Ways.from(step).stream().anyMatch(Ways.readingBeforeTuning(proof.procedure())::contains);
  }

  private static void counts(
      Proof proof, Step.Measure measure, Reachability.Node node, Findings found) {
    if (!node.at().has(Fact.AT_PITCH)) {
      found.add(
          node,
          measure.id() + " is read off pitch",
          "let a step that establishes at-pitch come first");
    } else if (measure.quantity() == Quantity.RELIEF && !node.at().has(Fact.SETTLED)) {
      found.add(
          node,
          measure.id() + " is read before the neck has settled",
          "let a wait of at least "
              + proof.limits().settleMinutes()
              + " min that establishes settled come between");
    }
  }
}
