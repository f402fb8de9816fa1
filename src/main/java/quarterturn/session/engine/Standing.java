package quarterturn.session.engine;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.PastTurns;

/** Describes the state that an instrument would be left in now. */
final class Standing {
  private Standing() {}

  /**
   * The state that a session left its instrument in, from its events alone, for a procedure that
   * can't go on.
   *
   * @param events all the session's events, oldest first
   */
  static String of(List<Event> events) {
    Event.Offered open = PastTurns.open(events);
    Event.Read read = null;
    boolean turned = open != null;
    for (Event event : Corrections.standing(events)) {
      turned |= event instanceof Event.Turned || event instanceof Event.Recalled;
      if (event instanceof Event.Read one
          && one.quantity() == Quantity.RELIEF
          && one.which() == Which.LOWEST
          && one.bracket() != null) {
        read = one;
        turned = open != null;
      }
    }
    String broken =
        events.get(events.size() - 1) instanceof Event.Left left ? left.standing() : "broken off";
    String where =
        open == null
            ? broken
            : "in the middle of a rod turn, "
                + EngineQuestions.made(open.turn())
                + ", which counts as made";
    String last = read == null ? "not read" : "last read as " + read.bracket();
    return where + "; relief " + last + (turned ? ", before the last turn" : "");
  }

  static String of(State state) {
    String left = left(state);
    return left == null ? now(state) : left;
  }

  /** The words recorded when the person left, if nothing was done since; or null. */
  private static @Nullable String left(State state) {
    for (int i = state.log().size() - 1; i >= 0; i--) {
      Event event = state.log().get(i);
      if (event instanceof Event.Left left) {
        return left.standing();
      }
      boolean back = event instanceof Event.Told told && told.step().equals(EngineQuestions.RESUME);
      if (!back && !(event instanceof Event.Resumed)) {
        return null;
      }
    }
    return null;
  }

  private static String now(State state) {
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
          + ", truss rod nut did not move";
    }
    if (state.bench().held(Quantity.RELIEF) != Freshness.FRESH
        && !state.history().turns().isEmpty()
        && readSinceTurn(state) == null) {
      if (!pitch) {
        return "rod turned, strings not yet back at pitch";
      }
      return state.bench().has(Fact.SETTLED)
          ? "rod turned, strings at pitch, neck settled but not yet read"
          : "rod turned, strings at pitch, neck not yet settled";
    }
    String rod =
        !state.history().turns().isEmpty()
            ? "rod not turned since the last reading"
            : state.history().others().elsewhere().isEmpty()
                ? "rod not turned"
                : "rod not turned in this session";
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

  /** What to do with key and strings before one leaves, a sentence each. */
  static List<String> parting(State state) {
    boolean turning = state.pending().open() != null;
    boolean turned = !state.history().turns().isEmpty() && readSinceTurn(state) == null;
    boolean slack =
        state.bench().has(Fact.DETUNED) || (turned && !state.bench().has(Fact.AT_PITCH));
    if (state.pending().ended() != null || !(turning || slack)) {
      return List.of();
    }
    List<String> parting = new ArrayList<>();
    parting.add("Take the key out of the truss rod nut.");
    parting.add(
        state.bench().has(Fact.NECK_LOOSE)
            ? "Leave the strings slack, and lay the instrument flat: its neck is loose."
            : "Tune all strings back to pitch.");
    if (turning) {
      parting.add("When you come back, you are asked how far the nut was turned.");
    }
    return parting;
  }

  /** Whether the rod did not move when it was last tried. */
  private static boolean stuck(State state) {
    int turns = state.history().turns().size();
    return turns > 0 && state.history().turns().get(turns - 1).turn().turns() == 0;
  }

  private static @Nullable Reading readSinceTurn(State state) {
    Reading last = state.history().last(Which.LOWEST);
    return last != null && last.turnsBefore() == state.history().turns().size() ? last : null;
  }
}
