package quarterturn.procedure.check;

import java.util.List;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Slip;
import quarterturn.procedure.read.Loaded;

/**
 * One thing that must hold of a procedure.
 *
 * @param id as a finding names it, such as {@code unknown-key}
 * @param means what has to hold, in one line
 * @param proving how it is decided where it is broken
 */
record Rule(String id, String means, Proving proving) {
  /** One that is decided while a file is read, so that nothing of it is left to be proven. */
  static Rule read(Slip slip, String means) {
    return new Rule(slip.rule(), means, (proof, found) -> {});
  }

  /** The places where it is broken, as they were found. */
  List<Fault> broken(Loaded loaded, Proof proof) {
    Findings found = new Findings(id, loaded, proof);
    proving.prove(proof, found);
    return found.all();
  }
}
