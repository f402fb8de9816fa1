package quarterturn.procedure;

import java.util.Map;

/** Everything the engine reads: procedures, kinds, hazards and limits. */
public record Library(
    Map<String, Procedure> procedures,
    Map<String, Kind> kinds,
    Map<String, Hazard> hazards,
    Limits limits) {
  public Library {
    procedures = Map.copyOf(procedures);
    kinds = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(kinds));
    hazards = Map.copyOf(hazards);
  }

  public Procedure procedure(String id) {
    Procedure procedure = procedures.get(id);
    if (procedure == null) {
      throw new IllegalArgumentException("there is no procedure " + id);
    }
    return procedure;
  }
}
