/** Floor 6: the full-screen face. */
@NullMarked
package quarterturn.screen;

import org.jspecify.annotations.NullMarked;
