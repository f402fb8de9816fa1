package quarterturn.procedure.check;

/** What nobody may skip, nobody skips. */
final class SkippedStep implements Proving {
  @Override
  public String id() {
    return "skipped-step";
  }

  @Override
  public String means() {
    return "A step that is marked never-skip is passed by every role.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Skips.Skip skip : Skips.of(proof.procedure())) {
      if (skip.step().words().neverSkip()) {
        found.add(
            this,
            skip.fork().mark(),
            "a "
                + skip.skipped().word()
                + " skips "
                + skip.step().id()
                + ", which is marked never-skip",
            "let the branch for that role lead through it",
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
            - when: role is beginner
              go: rest
            - when: role is technician
              go: play
        - choose: rest
          text: Is there a crack?
          never-skip: true
          options:
            - is: sound
              label: No
              go: play
            - is: crack
              label: Yes
              go: fine
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
              go: explain
            - when: role is technician
              go: rest
        - tell: explain
          text: Under load a crack grows.
          go: rest
        - choose: rest
          text: Is there a crack?
          never-skip: true
          options:
            - is: sound
              label: No
              go: play
            - is: crack
              label: Yes
              go: fine
        - tell: play
          text: Play every string.
          go: fine
        - done: fine
          text: Every string was played.
          outcome: played
        """);
  }
}
