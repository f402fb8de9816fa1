/**
 * Floor 4, the seam: what is asked, answered and recorded, and the instrument it is about.
 * Everything above speaks to a session in these words; how the next prompt is found, kept on disk
 * or looked up is in the rooms beside it.
 */
@NullMarked
package quarterturn.session;

import org.jspecify.annotations.NullMarked;
