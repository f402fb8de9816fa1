/**
 * Floor 7: the sheets of a lesson, of its class and its students. What happened in it is worked out
 * in {@code quarterturn.lesson}.
 */
@NullMarked
package quarterturn.report.lesson;

import org.jspecify.annotations.NullMarked;
