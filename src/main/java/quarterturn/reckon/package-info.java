/** Floor 6: the numbers by themselves, from the shell: {@code reckon TOPIC}. */
@NullMarked
package quarterturn.reckon;

import org.jspecify.annotations.NullMarked;
