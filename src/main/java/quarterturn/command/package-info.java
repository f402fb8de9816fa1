/** Floor 7: the command line; wiring and nothing else. */
@NullMarked
package quarterturn.command;

import org.jspecify.annotations.NullMarked;
