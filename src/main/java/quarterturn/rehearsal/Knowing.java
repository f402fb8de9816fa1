package quarterturn.rehearsal;

import java.util.List;
import quarterturn.craft.rod.Advice;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.craft.rod.Seen;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.unit.Turn;

/**
 * An advisor that knows the simulated neck and turns to where it comes nearest to the middle of the
 * window, by the turns that are open to {@link BeliefAdvisor}: the best that can be done.
 */
public record Knowing(SimulatedNeck neck) implements Unsuspecting {
  /** What a neck creeps on until it is read, as a part of its move. */
  private static final double CREEPS = 1.06;

  @Override
  public Advice advise(Question q) {
    double wanted = neck.turnTo(q.window().middleMm()).turns();
    double across =
        neck.turnTo(wanted > 0 ? q.window().lowMm() : q.window().highMm()).size().turns() / CREEPS;
    boolean shown = q.story().stream().anyMatch(Seen.Turned.class::isInstance);
    boolean lively = shown && neck.traits().mmPerQuarter() >= BeliefAdvisor.LIVELY_MM;
    boolean fine = lively && Turn.EIGHTH.turns() > across;
    Turn best = fine || !q.most().atLeast(Turn.EIGHTH) ? Turn.SIXTEENTH : Turn.EIGHTH;
    for (Turn size : List.of(Turn.EIGHTH, Turn.QUARTER)) {
      boolean open = q.most().atLeast(size) && size.turns() <= across;
      if (open && off(size, wanted) < off(best, wanted)) {
        best = size;
      }
    }
    return new Advice(new Turn(Math.copySign(best.turns(), wanted)), "");
  }

  private static double off(Turn size, double wanted) {
    return Math.abs(size.turns() - Math.abs(wanted));
  }
}
