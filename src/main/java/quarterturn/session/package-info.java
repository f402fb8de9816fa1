/**
 * Floor 4, the seam: what is asked, answered and recorded, and the instrument it is about. How the
 * next prompt is found, what happened is kept on disk, or a session is looked up belongs in the
 * rooms beside it.
 */
@NullMarked
package quarterturn.session;

import org.jspecify.annotations.NullMarked;
