/**
 * Floor 6: a lesson's folder and the files in it: the plan, and one file of events for each bench
 * and desk. What the events mean is in {@code lesson}.
 */
@NullMarked
package quarterturn.lesson.store;

import org.jspecify.annotations.NullMarked;
