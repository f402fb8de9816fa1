/** The commands for the data folder as a whole. What is in an archive stands below. */
@NullMarked
package quarterturn.command.data;

import org.jspecify.annotations.NullMarked;
