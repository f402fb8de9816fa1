/** Floor 6: what is printed about sessions and instruments. */
@NullMarked
package quarterturn.report;

import org.jspecify.annotations.NullMarked;
