/**
 * Floor 7: a procedure drawn as a graph of its steps, as text and in a language for graphs. What is
 * printed about sessions is in {@code report}.
 */
@NullMarked
package quarterturn.report.graph;

import org.jspecify.annotations.NullMarked;
