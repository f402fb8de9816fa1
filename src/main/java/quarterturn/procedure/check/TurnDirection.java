package quarterturn.procedure.check;

import quarterturn.procedure.Cell;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.Subject;
import quarterturn.procedure.bench.Held;

/** A turn has a known direction. */
final class TurnDirection implements Proving {
  @Override
  public String id() {
    return "turn-direction";
  }

  @Override
  public String means() {
    return "A turn comes only where the reading says which way: not within the window, and not where it leans nowhere.";
  }

  @Override
  public void prove(Proof proof, Findings found) {
    for (Paths.Node node : proof.turns()) {
      int relief = proof.paths().frame().index(new Subject.Reading(Quantity.RELIEF));
      boolean read = node.at().held(Quantity.RELIEF) == Held.FRESH;
      if (!(node.step() instanceof Step.TurnRod turn) || relief < 0 || !read) {
        continue;
      }
      Domain domain = proof.paths().frame().domains().get(relief);
      int mask = node.at().mask(relief);
      int known = domain.where(Frame.TIGHTEN) | domain.where(Frame.LOOSEN);
      if (turn.amount() instanceof Step.Amount.Fixed fixed) {
        known = domain.where(fixed.turn().turns() > 0 ? Frame.TIGHTEN : Frame.LOOSEN);
      } else if (turn.amount() instanceof Step.Amount.Undo) {
        known = node.at().turned() ? domain.all() : 0;
      }
      if ((mask & ~known) != 0) {
        Cell cell = domain.cells().get(Integer.numberOfTrailingZeros(mask & ~known));
        found.add(
            this,
            turn.mark(),
            "the turn "
                + turn.id()
                + " has no direction for: "
                + CellWords.of(domain.subject(), cell),
            turn.amount() instanceof Step.Amount.Undo
                ? "let only a turn that was made be taken back"
                : "let only readings below or above the window, or leaning so, lead to it",
            proof.paths().way(node));
      }
    }
  }

  @Override
  public Example bad() {
    return Example.sound(
        """
            - when: relief cannot be measured or leans nowhere
              go: repairer
            - when: relief in target or leans into target
              go: fine
        """,
        """
            - when: relief cannot be measured
              go: repairer
            - when: relief leans nowhere
              go: answer
            - when: relief in target or leans into target
              go: fine
        """);
  }

  @Override
  public Example good() {
    return Example.sound(
        """
            - when: relief cannot be measured or leans nowhere
              go: repairer
            - when: relief in target or leans into target
              go: fine
        """);
  }
}
