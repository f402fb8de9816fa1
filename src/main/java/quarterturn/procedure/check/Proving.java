package quarterturn.procedure.check;

/** How a rule is decided once the whole procedure, and all it calls, was read. */
interface Proving {
  /** Adds a finding for each place where the rule is broken. */
  void prove(Proof proof, Findings found);
}
