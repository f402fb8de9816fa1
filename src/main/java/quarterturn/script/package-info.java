/**
 * Floor 9: the faces for programs: prompts, questions, advice and results, one JSON object a line.
 * Prompts and the judgement of answers come from the floors below.
 */
@NullMarked
package quarterturn.script;

import org.jspecify.annotations.NullMarked;
