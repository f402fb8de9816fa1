/**
 * Makes what is installed without a toolchain: the program with a Java of its own, and what shells,
 * the manual and a desktop know of it. It is built with the tests and no part of the program.
 */
@NullMarked
package quarterturn.image;

import org.jspecify.annotations.NullMarked;
