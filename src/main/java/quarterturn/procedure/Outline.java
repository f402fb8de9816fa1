package quarterturn.procedure;

/**
 * What a list of sessions needs to know of all procedures: when to look again, and what they are
 * called. Kinds and hazards, which take longer to read, are only in a {@link Library}.
 */
public record Outline(Limits limits, Results results) {}
