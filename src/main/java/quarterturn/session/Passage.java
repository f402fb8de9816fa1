package quarterturn.session;

/**
 * A way out of a step, as it was taken.
 *
 * @param from the step
 * @param way its index among {@link quarterturn.procedure.Ways#of(String,
 *     quarterturn.procedure.Step)}
 */
public record Passage(Place from, int way) {}
