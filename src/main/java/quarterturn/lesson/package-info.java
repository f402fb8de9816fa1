/**
 * Floor 6: a lesson's plan, its events and files, and what one bench's events add up to. What a
 * bench asks its students is in {@code bench}, what a teacher sees and orders in {@code teacher}.
 */
@NullMarked
package quarterturn.lesson;

import org.jspecify.annotations.NullMarked;
