/**
 * A data folder as a whole: what it holds, whether all of it can be read, and one file of it that
 * goes to another machine and back. What a session or an instrument means stands elsewhere.
 */
@NullMarked
package quarterturn.session.store.archive;

import org.jspecify.annotations.NullMarked;
