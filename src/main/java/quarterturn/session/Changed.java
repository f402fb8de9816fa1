package quarterturn.session;

import java.time.Instant;

/**
 * Something that was done to the instrument in this session.
 *
 * @param change its id in the matrix of results
 */
public record Changed(Instant at, String change) {}
