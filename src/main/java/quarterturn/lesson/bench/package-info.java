/**
 * Floor 6: what a lesson puts before a prompt of a bench's session: predictions, holds, reasons,
 * questions. It shows nothing itself; the faces do.
 */
@NullMarked
package quarterturn.lesson.bench;

import org.jspecify.annotations.NullMarked;
