package quarterturn.session;

/**
 * A way out of a step that a session took.
 *
 * @param from the step
 * @param way its index in {@link quarterturn.procedure.Ways#of(String, quarterturn.procedure.Step)}
 */
public record Passage(Place from, int way) {}
