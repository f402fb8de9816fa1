/** Floor 6: the typed face, plain lines that a screen reader can follow. */
@NullMarked
package quarterturn.line;

import org.jspecify.annotations.NullMarked;
