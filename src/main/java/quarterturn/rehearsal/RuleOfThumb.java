package quarterturn.rehearsal;

import org.jspecify.annotations.Nullable;
import quarterturn.craft.Advice;
import quarterturn.craft.Advisor;
import quarterturn.craft.Decision;
import quarterturn.craft.Range;
import quarterturn.craft.Seen;
import quarterturn.unit.Turn;

/** An eighth, then a quarter the right way until it reads right: common practice, no source. */
final class RuleOfThumb implements Advisor {
  private static final Range ANYTHING = new Range(Double.NEGATIVE_INFINITY, 9);

  @Override
  public Advice advise(Question q) {
    boolean first = q.story().stream().noneMatch(Seen.Turned.class::isInstance);
    double size = Math.min(q.most().turns(), (first ? Turn.EIGHTH : Turn.QUARTER).turns());
    double way = q.reading().middleMm() > q.window().middleMm() ? 1 : -1;
    return new Advice(new Turn(way * size), "");
  }

  @Override
  public Decision.@Nullable Reason fault(Question q) {
    return null;
  }

  @Override
  public Range expect(Question q, Turn turn) {
    return ANYTHING;
  }
}
