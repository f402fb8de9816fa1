package quarterturn.session;

/** A step of a procedure. */
public record Place(String procedure, String step) {}
