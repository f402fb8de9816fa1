package quarterturn.session;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Which;
import quarterturn.procedure.bench.Held;

/** In what state an instrument would be left now, in words. */
final class Standing {
  private Standing() {}

  static String of(State state) {
    StringBuilder text = new StringBuilder();
    if (state.bench().has(Fact.NECK_LOOSE)) {
      text.append("neck loose in its pocket, ");
    }
    text.append(rodAndStrings(state));
    return text.toString();
  }

  private static String rodAndStrings(State state) {
    if (state.pending().open() != null) {
      return "in the middle of a rod turn";
    }
    boolean pitch = state.bench().has(Fact.AT_PITCH);
    boolean detuned = state.bench().has(Fact.DETUNED);
    if (stuck(state)) {
      return (pitch ? "strings at pitch" : detuned ? "strings detuned" : "strings as found")
          + ", rod nut did not move";
    }
    if (state.bench().held(Quantity.RELIEF) != Held.FRESH && !state.history().turns().isEmpty() && readSinceTurn(state) == null) {
      if (!pitch) {
        return "rod turned, strings not yet back at pitch";
      }
      return state.bench().has(Fact.SETTLED)
          ? "rod turned, strings at pitch, neck settled but not yet read"
          : "rod turned, strings at pitch, neck not yet settled";
    }
    String rod = state.history().turns().isEmpty() ? "rod not turned" : "rod not turned since the last reading";
    if (detuned) {
      return "strings detuned, " + rod;
    }
    Reading last = state.history().last(Which.LOWEST);
    String read =
        last == null || last.read().bracket() == null
            ? "relief not yet read"
            : "relief last read: " + last.read().bracket();
    return (pitch ? "strings at pitch, " : "strings as found, ") + rod + ", " + read;
  }

  /** Whether the rod was last tried and did not move. */
  private static boolean stuck(State state) {
    int turns = state.history().turns().size();
    return turns > 0 && state.history().turns().get(turns - 1).turn().turns() == 0;
  }

  private static @Nullable Reading readSinceTurn(State state) {
    Reading last = state.history().last(Which.LOWEST);
    return last != null && last.turnsBefore() == state.history().turns().size() ? last : null;
  }
}
