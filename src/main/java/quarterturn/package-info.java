@NullMarked
package quarterturn;

import org.jspecify.annotations.NullMarked;
