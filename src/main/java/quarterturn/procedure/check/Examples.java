package quarterturn.procedure.check;

/**
 * What a rule asks for, shown.
 *
 * @param good a piece of a procedure that breaks no rule
 * @param bad a piece that breaks this rule and no other
 */
record Examples(Example good, Example bad) {}
