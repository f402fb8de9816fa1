/**
 * Floor 9: the typed faces of a session, a lesson's bench, a teacher's desk and the home view, as
 * plain lines that a screen reader can follow. They ask nothing of their own and know no rule of
 * the trade.
 */
@NullMarked
package quarterturn.line;

import org.jspecify.annotations.NullMarked;
