package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;

/**
 * The walks made so far, so that a procedure that several others call is walked once. A walk holds
 * for the same bytes of a procedure, of all it calls, and of the results and limits.
 */
public final class Walks {
  private final Map<List<Object>, Reachability> known = new HashMap<>();

  /** A copy of the walks so far; what is added to one is not added to the other. */
  public Walks copy() {
    Walks copy = new Walks();
    copy.known.putAll(known);
    return copy;
  }

  Reachability of(Library library, Procedure procedure, Supplier<Reachability> walk) {
    List<Object> key =
        new ArrayList<>(List.of(procedure.id(), library.results(), library.limits()));
    Set<String> digests = new LinkedHashSet<>();
    digests(library, procedure, digests);
    key.addAll(digests);
    Reachability paths = known.get(key);
    if (paths == null) {
      paths = walk.get();
      known.put(key, paths);
    }
    return paths;
  }

  private static void digests(Library library, Procedure procedure, Set<String> digests) {
    if (!digests.add(procedure.digest())) {
      return;
    }
    for (Step step : procedure.steps().values()) {
      Procedure called =
          step instanceof Step.Call call ? library.procedures().get(call.procedure()) : null;
      if (called != null) {
        digests(library, called, digests);
      }
    }
  }
}
