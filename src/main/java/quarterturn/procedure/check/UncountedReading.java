package quarterturn.procedure.check;

import quarterturn.procedure.Fact;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;

/** A reading is taken so that it counts. */
final class UncountedReading implements Proving {
  @Override
  public String id() {
    return "uncounted-reading";
  }

  @Override
  public String means() {
    return "A string is read at pitch, and relief only once the neck has settled.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Step step : proof.steps().values()) {
      if (!(step instanceof Step.Measure measure) || !measure.quantity().onString()) {
        continue;
      }
      for (Paths.Node node : proof.paths().at(step.id())) {
        boolean pitch = node.at().has(Fact.AT_PITCH);
        boolean settled = measure.quantity() != Quantity.RELIEF || node.at().has(Fact.SETTLED);
        if (!pitch || !settled) {
          found.add(
              this,
              measure.mark(),
              measure.id() + " is read " + (pitch ? "before the neck has settled" : "off pitch"),
              pitch
                  ? "let a wait of at least "
                      + proof.limits().settleMinutes()
                      + " min that establishes settled come between"
                  : "let a step that establishes at-pitch come first",
              proof.paths().way(node));
        }
      }
    }
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: tune
          text: Tune every string to its pitch.
          hazards: [string-whip]
          establishes: [at-pitch]
          go: read
        - measure: read
          text: Read the {lowest} string.
          quantity: relief
          string: lowest
          gauge: 0.05 mm
          plausible: 0..3 mm
          branches:
            - when: relief cannot be measured
              go: fine
            - when: relief was read
              go: fine
        - done: fine
          text: It was looked at.
          outcome: looked
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - tell: tune
          text: Tune every string to its pitch.
          hazards: [string-whip]
          establishes: [at-pitch]
          go: settle
        - wait: settle
          text: Let the neck settle for {minutes}.
          for: 10 min
          establishes: [settled]
          go: read
        - measure: read
          text: Read the {lowest} string.
          quantity: relief
          string: lowest
          gauge: 0.05 mm
          plausible: 0..3 mm
          branches:
            - when: relief cannot be measured
              go: fine
            - when: relief was read
              go: fine
        - done: fine
          text: It was looked at.
          outcome: looked
        """);
  }
}
