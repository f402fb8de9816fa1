package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Step;

/** Every loop has a limit. */
final class EndlessLoop {
  private static final Example BAD =
      Example.steps(
          """
          - choose: holds
            text: Does the string hold its pitch?
            options:
              - is: holds
                label: Yes
                go: fine
              - is: drifts
                label: No
                go: tune
          - tell: tune
            text: Tune it once more.
            hazards: [string-whip]
            establishes: [at-pitch]
            go: holds
          - done: fine
            text: The string holds.
            outcome: holds
          """);

  private static final Example GOOD =
      BAD.with("holds.\n  outcome: holds", "holds, or it never will.\n  outcome: tuned")
          .with(
              "      go: tune\n",
              """
                    go: again
              - compute: again
                calculation: response
                branches:
                  - when: holds reached less than 5 times
                    go: tune
                  - when: holds reached at least 5 times
                    go: fine
              """);

  static final Rule RULE =
      new Rule(
          "endless-loop",
          "Every loop is limited by a count, or proves its progress: a turn by what the neck answered.",
          EndlessLoop::prove,
          new Examples(GOOD, BAD));

  private EndlessLoop() {}

  private static void prove(Proof proof, Findings found) {
    for (List<String> loop : new Loops(proof.procedure()).endless()) {
      Step step = proof.steps().get(loop.get(0));
      if (step != null && Shape.ends(proof.procedure(), step.id())) {
        List<String> way = new ArrayList<>(loop);
        way.add(step.id());
        found.add(
            step.mark(),
            "this loop can go round for ever",
            "leave it by a count ("
                + step.id()
                + " reached at least 3 times), or, where the rod"
                + " is turned, by what the neck did",
            way);
      }
    }
  }
}
