/**
 * What commands have in common: a clock, help, and the options that say whose data they work on;
 * and where they write. Standard output, files and folders are checked here, and what is wrong with
 * one is one line. It knows no command.
 */
@NullMarked
package quarterturn.command.place;

import org.jspecify.annotations.NullMarked;
