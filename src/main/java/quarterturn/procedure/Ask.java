package quarterturn.procedure;

import org.jspecify.annotations.Nullable;

/**
 * A question for a lesson.
 *
 * @param about id of the step whose result answers it, or null
 */
public record Ask(String question, @Nullable String about) {}
