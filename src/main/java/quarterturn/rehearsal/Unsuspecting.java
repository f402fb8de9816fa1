package quarterturn.rehearsal;

import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.Advisor;
import quarterturn.craft.rod.Decision;
import quarterturn.craft.rod.Range;
import quarterturn.unit.Turn;

/** An advisor to compare with, which never finds a fault. */
public interface Unsuspecting extends Advisor {
  Range ANYTHING = new Range(Double.NEGATIVE_INFINITY, 9);

  @Override
  default Decision.@Nullable Reason fault(Question question) {
    return null;
  }

  @Override
  default double chance(Question question, Turn turn) {
    return 0.5;
  }

  @Override
  default Range expect(Question question, Turn turn) {
    return ANYTHING;
  }
}
