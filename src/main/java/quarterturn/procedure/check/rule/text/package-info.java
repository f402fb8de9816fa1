/**
 * Floor 3: the rules about what the words of a step say, whichever way leads to it. Those about a
 * turn's words are in {@code rule.turn}; how an order is read is in {@code words}.
 */
@NullMarked
package quarterturn.procedure.check.rule.text;

import org.jspecify.annotations.NullMarked;
