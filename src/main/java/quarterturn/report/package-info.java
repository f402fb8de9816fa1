/**
 * Floor 7: what is printed about sessions, instruments and simulated fleets, as text. Sheets for a
 * customer are in {@code sheet}, those of a lesson in {@code lesson}, drawings of a procedure in
 * {@code graph}.
 */
@NullMarked
package quarterturn.report;

import org.jspecify.annotations.NullMarked;
