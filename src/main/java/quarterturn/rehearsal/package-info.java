/**
 * Floor 5: simulated people at a bench, who answer prompts by what a simulated instrument shows.
 * The instruments are in {@code simulated}, many of them at once in {@code fleet}.
 */
@NullMarked
package quarterturn.rehearsal;

import org.jspecify.annotations.NullMarked;
