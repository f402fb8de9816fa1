package quarterturn.procedure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** One way on from a step: where to go when its condition holds. */
public record Branch(Condition when, String go, Mark mark) {

  /** The ways on from a step: the first whose condition holds, else {@code otherwise}. */
  public record Fork(List<Branch> branches, @Nullable String otherwise) {
    public Fork {
      branches = List.copyOf(branches);
    }

    /** A fork with one way. */
    public static Fork to(String step) {
      return new Fork(List.of(), step);
    }
  }
}
