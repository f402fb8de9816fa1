/**
 * Floor 7: a lesson in words, for its board and for the sheets of class and students. What happened
 * in it is worked out in {@code quarterturn.lesson}.
 */
@NullMarked
package quarterturn.report.lesson;

import org.jspecify.annotations.NullMarked;
