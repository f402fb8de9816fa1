/**
 * Floor 2: the trade's physics, each formula with its source, as pure functions on lengths, pitches
 * and forces. Nothing here knows a file, a clock, a procedure or a person; what is believed of a
 * neck is in {@code rod}.
 */
@NullMarked
package quarterturn.craft;

import org.jspecify.annotations.NullMarked;
