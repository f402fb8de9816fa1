package quarterturn.rehearsal.fleet;

import quarterturn.craft.rod.Advice;
import quarterturn.craft.rod.Seen;
import quarterturn.rehearsal.Unsuspecting;
import quarterturn.unit.Turn;

/**
 * An advisor by a rule of thumb: an eighth of a turn, then quarters until the relief reads right;
 * common practice, no source.
 */
final class RuleOfThumb implements Unsuspecting {
  @Override
  public Advice advise(Question q) {
    boolean first = q.story().stream().noneMatch(Seen.Turned.class::isInstance);
    double size = Math.min(q.most().turns(), (first ? Turn.EIGHTH : Turn.QUARTER).turns());
    double way = q.reading().middleMm() > q.window().middleMm() ? 1 : -1;
    return new Advice(new Turn(way * size), "");
  }
}
