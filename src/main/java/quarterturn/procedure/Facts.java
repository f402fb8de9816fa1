package quarterturn.procedure;

import java.util.EnumSet;
import java.util.Set;

/** What is true of the bench, and how one fact puts out another. */
public final class Facts {
  private Facts() {}

  /**
   * The facts once {@code established} are: strings at pitch are not detuned and not settled yet,
   * and a neck that is loose in its pocket holds no pitch.
   */
  public static Set<Fact> with(Set<Fact> facts, Set<Fact> established) {
    EnumSet<Fact> now = facts.isEmpty() ? EnumSet.noneOf(Fact.class) : EnumSet.copyOf(facts);
    for (Fact fact : established) {
      switch (fact) {
        case AT_PITCH -> {
          now.remove(Fact.DETUNED);
          now.remove(Fact.SETTLED);
          if (!now.contains(Fact.NECK_LOOSE)) {
            now.add(Fact.AT_PITCH);
          }
        }
        case DETUNED -> {
          now.remove(Fact.AT_PITCH);
          now.remove(Fact.SETTLED);
          now.add(Fact.DETUNED);
        }
        case NECK_LOOSE -> {
          now.remove(Fact.AT_PITCH);
          now.remove(Fact.SETTLED);
          now.remove(Fact.NECK_FAST);
          now.add(Fact.NECK_LOOSE);
        }
        case NECK_FAST -> {
          now.remove(Fact.NECK_LOOSE);
          now.add(Fact.NECK_FAST);
        }
        default -> now.add(fact);
      }
    }
    return Set.copyOf(now);
  }
}
