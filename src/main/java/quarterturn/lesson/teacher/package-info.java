/**
 * Floor 6: what a teacher sees of all benches and orders, in words too, and what a lesson was for
 * each bench and student. It shows nothing itself; the faces do.
 */
@NullMarked
package quarterturn.lesson.teacher;

import org.jspecify.annotations.NullMarked;
