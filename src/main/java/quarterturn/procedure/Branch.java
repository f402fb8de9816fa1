package quarterturn.procedure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Condition;

/** One way on from a step: where to go when its condition holds. */
public record Branch(Condition when, String go, Mark mark) {

  /** The ways on from a step: the first whose condition holds, else {@code otherwise}. */
  public record Fork(List<Branch> branches, @Nullable String otherwise) {
    public Fork {
      branches = List.copyOf(branches);
    }

    /** The ways on, in order. */
    List<Step.Exit> exits() {
      List<Step.Exit> exits = new ArrayList<>();
      branches.forEach(branch -> exits.add(new Step.Exit("", branch.when(), branch.go())));
      if (otherwise != null) {
        exits.add(new Step.Exit(exits.isEmpty() ? "" : "otherwise", otherwise));
      }
      return exits;
    }

    /** The step that way number {@code way} leads to, or null where there is none. */
    public @Nullable String way(int way) {
      return way < branches.size() ? branches.get(way).go() : otherwise;
    }

    /** The fork of a step that does not branch. */
    static final Fork NONE = new Fork(List.of(), null);

    /** A fork with one way. */
    public static Fork to(String step) {
      return new Fork(List.of(), step);
    }
  }
}
