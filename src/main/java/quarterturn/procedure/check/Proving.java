package quarterturn.procedure.check;

/** A rule that is decided once the whole procedure, and all it calls, was read. */
interface Proving extends Rule {
  /** Adds a finding for each place where it is broken. */
  void prove(Proof proof, Findings found);
}
