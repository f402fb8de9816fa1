/**
 * Floor 10: the command line, which reads options, opens what they name and hands it to a face. It
 * is wiring: no prompt, no rule and no formula belongs here.
 */
@NullMarked
package quarterturn.command;

import org.jspecify.annotations.NullMarked;
