/** The commands of a lesson, from its plan to its sheets. What a lesson is stands below. */
@NullMarked
package quarterturn.command.lesson;

import org.jspecify.annotations.NullMarked;
