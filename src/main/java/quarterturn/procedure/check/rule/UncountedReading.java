package quarterturn.procedure.check.rule;

import java.util.regex.Pattern;
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
          "A string is read at pitch, tuned without a capo, and relief only once the neck has settled.",
          UncountedReading::prove);

  private static final Pattern CAPO = Pattern.compile("(?i)\\bcapo\\b");

  private static final Pattern OFF =
      Pattern.compile("(?i)\\b(off|without|no|not|never|remove|lift|would|before|after)\\b");

  private UncountedReading() {}

  private static void prove(Proof proof, Step step, Findings found) {
    boolean eases = proof.said(step).stream().anyMatch(s -> s.order().act() == Act.EASE_STRING);
    if (eases && (read(step) || untuned(proof, step))) {
      found.add(
          step,
          "a string that " + step.id() + " lets down can be read off pitch",
          "let a step that establishes at-pitch come between");
    }
    if (step.establishes().contains(Fact.AT_PITCH)) {
      step.words()
          .sentences()
          .filter(CAPO.asPredicate().and(OFF.asPredicate().negate()))
          .forEach(
              sentence ->
                  found.add(
                      step,
                      step.id() + " tunes behind a capo: \"" + sentence + "\"",
                      "let the capo come off before the strings are tuned"));
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
