package quarterturn.procedure.check.words;

/**
 * A verb in a segment.
 *
 * @param place where in the segment
 * @param base the form an order has
 */
record Verb(int place, String base, Mood mood) {}
