package quarterturn.procedure.check.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.walk.Reachability;
import quarterturn.procedure.read.Loaded;

/** The faults by which one procedure breaks one rule, as far as was found. */
public final class Findings {
  /** Most findings at one place; more of the same only hides the rest. */
  private static final int MOST = 3;

  private final String rule;
  private final Loaded loaded;
  private final Proof proof;
  private final List<Fault> all = new ArrayList<>();
  private final Set<List<Object>> seen = new HashSet<>();
  private final Map<Mark, Integer> places = new HashMap<>();

  Findings(String rule, Loaded loaded, Proof proof) {
    this.rule = rule;
    this.loaded = loaded;
    this.proof = proof;
  }

  /** Adds a fault of a step, whichever way leads to it. */
  public void add(Step step, String wrong, String mend) {
    add(step.mark(), wrong, mend, List.of());
  }

  /** Adds a fault of a step on the way to a node of it. */
  public void add(Reachability.Node node, String wrong, String mend) {
    // The walk may have been made of the same bytes in another file.
    Mark mark = proof.procedure().step(node.step().id()).mark();
    add(mark, wrong, mend, proof.paths().way(node));
  }

  /** Adds a fault, unless the same was found at the place already. */
  public void add(Mark mark, String wrong, String mend, List<String> way) {
    if (seen.add(List.of(mark, wrong)) && places.merge(mark, 1, Integer::sum) <= MOST) {
      String said = mend.substring(0, 1).toUpperCase(Locale.ROOT) + mend.substring(1);
      all.add(loaded.fault(rule, mark, wrong, said, way));
    }
  }

  List<Fault> all() {
    return all;
  }
}
