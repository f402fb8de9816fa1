/**
 * Floor 6: a lesson's plan, its events, and what one bench's events add up to. Its files are in
 * {@code store}, what a bench asks its students in {@code student}, what a teacher sees and orders
 * in {@code teacher}.
 */
@NullMarked
package quarterturn.lesson;

import org.jspecify.annotations.NullMarked;
