/**
 * Floor 6: the teacher's lesson: benches that predict before they read, and a board that follows.
 */
@NullMarked
package quarterturn.lesson;

import org.jspecify.annotations.NullMarked;
