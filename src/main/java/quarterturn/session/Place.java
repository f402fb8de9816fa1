package quarterturn.session;

/** A step of a procedure. */
record Place(String procedure, String step) {}
