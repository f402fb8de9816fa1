package quarterturn.procedure;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.kind.Kind;
import quarterturn.unit.NotUnderstoodException;

/**
 * Everything the engine reads: procedures, the one asked for first, kinds, hazards, limits, and
 * results.
 */
public record Library(
    Map<String, Procedure> procedures,
    Map<String, Kind> kinds,
    Map<String, Hazard> hazards,
    Limits limits,
    Results results) {
  public Library {
    procedures = Collections.unmodifiableMap(new LinkedHashMap<>(procedures));
    kinds = Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
    hazards = Collections.unmodifiableMap(new LinkedHashMap<>(hazards));
  }

  /** The procedure that was asked for; the others are those it calls. */
  public Procedure main() {
    return procedures.values().iterator().next();
  }

  /** A library with these limits and nothing else. */
  public Library limitsAlone() {
    return new Library(Map.of(), Map.of(), Map.of(), limits, Results.NONE);
  }

  /**
   * The kind of instrument with this id.
   *
   * @throws NotUnderstoodException naming those there are
   */
  public Kind kind(String id) {
    Kind kind = kinds.get(id);
    if (kind == null) {
      String all = String.join(", ", kinds.keySet());
      throw new NotUnderstoodException(
          "there is no kind " + id + Quote.asking(id, kinds.keySet()) + "; choose one of " + all);
    }
    return kind;
  }

  /** Whether a procedure, or one that it calls, has a step of which {@code so} holds. */
  public boolean any(Procedure procedure, Predicate<Step> so) {
    return any(procedure, so, new HashSet<>());
  }

  private boolean any(Procedure procedure, Predicate<Step> so, Set<String> seen) {
    if (!seen.add(procedure.id())) {
      return false;
    }
    for (Step step : procedure.steps().values()) {
      Procedure called = step instanceof Step.Call call ? procedures.get(call.procedure()) : null;
      if (so.test(step) || (called != null && any(called, so, seen))) {
        return true;
      }
    }
    return false;
  }

  public Procedure procedure(String id) {
    Procedure procedure = procedures.get(id);
    if (procedure == null) {
      throw new IllegalArgumentException("there is no procedure " + id);
    }
    return procedure;
  }
}
