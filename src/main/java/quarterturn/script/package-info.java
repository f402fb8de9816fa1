/**
 * Floor 9: the faces for programs: prompts, questions, advice and results, a JSON object a line.
 * What is asked and how an answer is judged is decided on the floors below.
 */
@NullMarked
package quarterturn.script;

import org.jspecify.annotations.NullMarked;
