/**
 * Floor 7: what is printed about sessions, instruments, procedures and simulated fleets, as text.
 * Sheets for a customer are in {@code sheet}, those of a lesson in {@code lesson}.
 */
@NullMarked
package quarterturn.report;

import org.jspecify.annotations.NullMarked;
