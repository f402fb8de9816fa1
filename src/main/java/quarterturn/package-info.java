/** Where the program starts. Everything but {@code Main} lives on one of the ten floors below. */
@NullMarked
package quarterturn;

import org.jspecify.annotations.NullMarked;
