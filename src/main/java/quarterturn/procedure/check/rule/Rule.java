package quarterturn.procedure.check.rule;

import java.util.List;
import java.util.function.BiConsumer;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Slip;
import quarterturn.procedure.Step;
import quarterturn.procedure.read.Loaded;

/**
 * A rule that every procedure has to keep.
 *
 * @param id as a finding names it, such as {@code unknown-key}
 * @param means what has to hold, in one line
 * @param proving adds a finding for each place where it is broken, once the procedure and all it
 *     calls was read
 */
public record Rule(String id, String means, BiConsumer<Proof, Findings> proving) {
  /** Decides a rule that each step keeps or breaks. */
  public interface OnStep {
    /** Adds a finding where the step breaks the rule. */
    void prove(Proof proof, Step step, Findings found);
  }

  /** A rule that each step keeps or breaks. */
  public static Rule ofSteps(String id, String means, OnStep proving) {
    return new Rule(
        id,
        means,
        (proof, found) ->
            proof.steps().values().forEach(step -> proving.prove(proof, step, found)));
  }

  /** A rule that is decided while a file is read, so that nothing is left to be proven. */
  public static Rule read(Slip slip, String means) {
    return new Rule(slip.word(), means, (proof, found) -> {});
  }

  /** The places where the rule is broken, in the order they were found. */
  public List<Fault> broken(Loaded loaded, Proof proof) {
    Findings found = new Findings(id, loaded, proof);
    proving.accept(proof, found);
    return found.all();
  }
}
