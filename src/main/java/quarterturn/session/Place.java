package quarterturn.session;

/** A step of a procedure, by the ids of both. */
public record Place(String procedure, String step) {}
