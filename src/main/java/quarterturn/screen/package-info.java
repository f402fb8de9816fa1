/**
 * Floor 9: the full-screen faces: a session, a bench in a lesson, a teacher's board, the home view,
 * each a loop over keys. They show prompts and read answers, and know no rule of the trade.
 */
@NullMarked
package quarterturn.screen;

import org.jspecify.annotations.NullMarked;
