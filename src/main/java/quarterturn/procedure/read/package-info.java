/**
 * Floor 3: YAML in, the model or faults with line and column out, and the schema of the format.
 * Whether a sound file is also a safe procedure is decided in {@code check}.
 */
@NullMarked
package quarterturn.procedure.read;

import org.jspecify.annotations.NullMarked;
