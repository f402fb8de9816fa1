package quarterturn.procedure.check;

import quarterturn.procedure.Role;
import quarterturn.procedure.Step;

/** A beginner waits. */
final class SkippedWait implements Proving {
  @Override
  public String id() {
    return "skipped-wait";
  }

  @Override
  public String means() {
    return "A wait that one role has to let pass is not skipped for a beginner.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Skips.Skip skip : Skips.of(proof.procedure())) {
      if (skip.step() instanceof Step.Wait && skip.skipped() == Role.BEGINNER) {
        found.add(
            this,
            skip.fork().mark(),
            "a beginner skips the wait " + skip.step().id(),
            "only a technician may shorten a wait, with a reason",
            skip.way());
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
          go: who
        - compute: who
          calculation: response
          branches:
            - when: role is technician
              go: rest
            - when: role is beginner
              go: play
        - wait: rest
          text: Let it rest for {minutes}.
          for: 24 h
          go: play
        - tell: play
          text: Play every string.
          go: fine
        - done: fine
          text: Every string was played.
          outcome: played
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
          go: who
        - compute: who
          calculation: response
          branches:
            - when: role is beginner
              go: rest
            - when: role is technician
              go: play
        - wait: rest
          text: Let it rest for {minutes}.
          for: 24 h
          go: play
        - tell: play
          text: Play every string.
          go: fine
        - done: fine
          text: Every string was played.
          outcome: played
        """);
  }
}
