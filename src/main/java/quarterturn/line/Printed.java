package quarterturn.line;

import java.util.List;
import quarterturn.procedure.Hazard;

/**
 * What was printed before a prompt and needs no second print.
 *
 * @param notes its notes that were printed already
 * @param hazards the hazards that were read in full and accepted right before it
 */
record Printed(List<String> notes, List<Hazard> hazards) {
  static final Printed NOTHING = new Printed(List.of(), List.of());
}
