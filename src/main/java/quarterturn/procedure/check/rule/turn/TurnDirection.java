package quarterturn.procedure.check.rule.turn;

import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.walk.CellWords;
import quarterturn.procedure.check.walk.Domain;
import quarterturn.procedure.check.walk.Frame;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.kind.Quantity;

/** The rule that a turn has a known direction. */
public final class TurnDirection {
  public static final Rule RULE =
      Turning.rule(
          "turn-direction",
          "A turn comes only where it is known which way: the reading lies outside the range, or"
              + " leans so, or a turn is left to be set back.",
          TurnDirection::prove);

  private TurnDirection() {}

  private static void prove(Proof proof, Turning turning, Findings found) {
    if (turning.setsBack()) {
      if (!left(proof, turning)) {
        found.add(
            turning.node(),
            turning + " can be reached with nothing left to set back",
            "ask on this way: turned last time at least 1/32 turn");
      }
      return;
    }
    int relief = proof.paths().frame().index(new Subject.Reading(Quantity.RELIEF));
    if (relief >= 0 && turning.relief() == Freshness.FRESH) {
      Domain domain = proof.paths().frame().domains().get(relief);
      int open = turning.node().at().mask(relief) & ~known(domain, turning);
      if (open != 0) {
        Cell cell = domain.cells().get(Integer.numberOfTrailingZeros(open));
        found.add(
            turning.node(),
            turning + " has no direction for: " + CellWords.of(domain.subject(), cell),
            mend(turning));
      }
    }
  }

  /** Whether something is left to set back, as was asked since the last turn. */
  private static boolean left(Proof proof, Turning turning) {
    int last = proof.paths().frame().index(new Subject.Turning(Condition.Span.LAST_TIME));
    if (last < 0) {
      return false;
    }
    int none = proof.paths().frame().domains().get(last).where(TurnDirection::none);
    return (turning.node().at().mask(last) & none) == 0;
  }

  private static boolean none(Cell cell) {
    return cell instanceof Cell.Amount amount && amount.from() <= 0;
  }

  private static String mend(Turning turning) {
    if (turning.turn().amount() instanceof Step.Amount.Fixed fixed) {
      boolean tightens = fixed.turn().turns() > 0;
      return "it always "
          + (tightens ? "tightens" : "loosens")
          + ": let only readings "
          + (tightens ? "above" : "below")
          + " the range lead to it, or let the amount be advised";
    }
    return turning.undoes()
        ? "let only a turn that was made be taken back"
        : "let only readings below or above the range, or leaning so, lead to it";
  }

  /** The cells of a domain in which the turn's direction is known, as a mask. */
  private static int known(Domain domain, Turning turning) {
    if (turning.turn().amount() instanceof Step.Amount.Fixed fixed) {
      return domain.where(fixed.turn().turns() > 0 ? Frame.TIGHTEN : Frame.LOOSEN);
    }
    if (turning.undoes()) {
      return turning.node().at().turned() ? domain.all() : 0;
    }
    return domain.where(Frame.TIGHTEN) | domain.where(Frame.LOOSEN);
  }
}
