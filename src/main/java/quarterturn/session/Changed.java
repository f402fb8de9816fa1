package quarterturn.session;

import java.time.Instant;

/**
 * A change made to the instrument in this session.
 *
 * @param change id of the change in the matrix of results
 */
public record Changed(Instant at, String change) {}
