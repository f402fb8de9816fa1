/**
 * Floor 6: a bench of students in a lesson, and what is put before a prompt of its session:
 * predictions, holds, reasons, questions. It shows nothing itself; the faces do.
 */
@NullMarked
package quarterturn.lesson.student;

import org.jspecify.annotations.NullMarked;
