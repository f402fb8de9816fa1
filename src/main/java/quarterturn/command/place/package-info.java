/**
 * Where a command writes, and what a person names on the command line: standard output, files and
 * folders. Each is checked, and what is wrong with it is one line. What a command does is in the
 * package above.
 */
@NullMarked
package quarterturn.command.place;

import org.jspecify.annotations.NullMarked;
