/**
 * Floor 7: the set-up sheet: what a session found, did and left, and the file formats of it. Other
 * tables and plots are in {@code report}.
 */
@NullMarked
package quarterturn.report.sheet;

import org.jspecify.annotations.NullMarked;
