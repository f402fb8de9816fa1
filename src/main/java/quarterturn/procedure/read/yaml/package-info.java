/**
 * Floor 3: YAML as a tree whose every piece knows its place, its values, and the faults found in a
 * file. What a procedure's keys mean is in {@code read}.
 */
@NullMarked
package quarterturn.procedure.read.yaml;

import org.jspecify.annotations.NullMarked;
