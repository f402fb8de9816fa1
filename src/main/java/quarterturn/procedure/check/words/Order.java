package quarterturn.procedure.check.words;

import org.jspecify.annotations.Nullable;

/**
 * Something that a text tells its reader to do.
 *
 * @param verb as {@code tighten}; empty where an amount alone says it
 * @param act what it changes on the instrument, or null
 * @param onPart whether an object stands with the verb
 * @param adds whether it says an amount, a way or going on in words of its own
 * @param sentence in which it stands, as it is written
 */
public record Order(
    String verb, @Nullable Act act, boolean onPart, boolean adds, String sentence) {}
