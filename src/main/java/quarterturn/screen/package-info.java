/**
 * Floor 9: the full screen for a session, a bench in a lesson, a teacher's board and the home view,
 * each a loop over keys. It shows prompts and reads answers, and knows no rule of the trade.
 */
@NullMarked
package quarterturn.screen;

import org.jspecify.annotations.NullMarked;
