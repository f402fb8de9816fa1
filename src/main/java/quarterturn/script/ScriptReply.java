package quarterturn.script;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Answer;

/**
 * What one line of a script asks for.
 *
 * @param answer the answer to give, or null to leave
 * @param at the time to set the clock to first, or null
 */
record ScriptReply(@Nullable Answer answer, @Nullable Instant at) {}
