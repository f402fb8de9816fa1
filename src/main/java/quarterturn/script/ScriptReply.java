package quarterturn.script;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Answer;

/**
 * The request of one line of a script.
 *
 * @param answer the answer to give, or null to leave
 * @param at the time to set the clock to before, or null
 */
record ScriptReply(@Nullable Answer answer, @Nullable Instant at) {}
