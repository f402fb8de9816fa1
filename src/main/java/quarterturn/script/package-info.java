/** Floor 6: the face for programs, one JSON object a line each way. */
@NullMarked
package quarterturn.script;

import org.jspecify.annotations.NullMarked;
