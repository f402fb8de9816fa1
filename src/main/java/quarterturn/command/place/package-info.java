/**
 * What commands have in common: a clock, help, and the options that say whose data they work on. It
 * knows no command.
 */
@NullMarked
package quarterturn.command.place;

import org.jspecify.annotations.NullMarked;
