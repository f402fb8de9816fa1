package quarterturn.procedure.check;

import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;

/** Before a turn its ground is laid. */
final class TurnNeeds implements Proving {
  @Override
  public String id() {
    return "turn-needs";
  }

  @Override
  public String means() {
    return "Before a turn the rod is identified and its key fits, on every way.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Paths.Node node : proof.turns()) {
      if (node.step() instanceof Step.TurnRod turn) {
        for (Fact need : proof.limits().turnNeeds()) {
          if (!node.at().has(need)) {
            found.add(
                this,
                turn.mark(),
                "the turn " + turn.id() + " can come before " + need.meaning(),
                "let a step that establishes " + need.word() + " come first on this way",
                proof.paths().way(node));
          }
        }
      }
    }
  }

  @Override
  public Example bad() {
    return Example.sound(
        """
        - choose: rod
          text: Where is the rod nut?
          options:
            - is: seen
              label: At the headstock
              establishes: [rod-identified]
              go: key
        """,
        """
        - choose: rod
          text: Where is the rod nut?
          options:
            - is: seen
              label: At the headstock
              go: key
        """);
  }

  @Override
  public Example good() {
    return Example.sound(
        """
        - choose: rod
          text: Where is the rod nut?
          options:
            - is: seen
              label: At the headstock
              establishes: [rod-identified]
              go: key
        """);
  }
}
