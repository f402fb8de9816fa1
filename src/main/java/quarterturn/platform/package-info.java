/**
 * Floor 2: what the program takes a system to be like: where a user's files belong, what tells one
 * file from another, whom a folder lets in, how names of files are written, how a terminal is
 * opened and a program stopped. Nothing else asks what system it runs on.
 */
@NullMarked
package quarterturn.platform;

import org.jspecify.annotations.NullMarked;
