package quarterturn.procedure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A procedure as read from its file.
 *
 * @param id its name, as in {@code start relief}
 * @param revision counts its author's changes
 * @param title shown as the stage
 * @param purpose one sentence
 * @param tools what to have at hand
 * @param begin id of the first step
 * @param retune id of the step that brings the strings to pitch, from which a fresh reading is
 *     taken; the first step where the file names none
 * @param reread id of the step that takes one reading again after a break
 * @param steps by id, in the file's order
 * @param digest SHA-256 of the file, in hexadecimal
 * @param needs ids of the results that must be fresh before it begins
 */
public record Procedure(
    String id,
    int revision,
    String title,
    String purpose,
    List<String> tools,
    String begin,
    String retune,
    String reread,
    Map<String, Step> steps,
    String digest,
    List<String> needs) {
  public Procedure {
    tools = List.copyOf(tools);
    needs = List.copyOf(needs);
    steps = Collections.unmodifiableMap(new LinkedHashMap<>(steps));
  }

  /** The step with this id. */
  public Step step(String id) {
    Step step = steps.get(id);
    if (step == null) {
      throw new IllegalArgumentException("procedure " + this.id + " has no step " + id);
    }
    return step;
  }

  /** The names of the parts its steps stand in, each once, in the file's order. */
  public List<String> parts() {
    return steps.values().stream().map(step -> step.words().part()).distinct().toList();
  }
}
