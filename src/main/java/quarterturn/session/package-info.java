/** Floor 4: prompt, answer and event; the engine between them; the journal on disk; instruments. */
@NullMarked
package quarterturn.session;

import org.jspecify.annotations.NullMarked;
