package quarterturn.session.engine;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;

/** Notes on what changed since the last prompt, each a sentence. */
final class Notes {
  private Notes() {}

  /** The notes for the prompt after the last event. */
  static List<String> of(State state, @Nullable Kind kind, @Nullable Window window) {
    return lastAnswer(state)
        .match(
            new Event.Cases<>(
                started -> notes(),
                accepted -> notes(),
                told -> notes(),
                noted -> notes(),
                adjusted -> notes(),
                chose -> notes(),
                read -> read(state, read, kind, window),
                offered -> notes(),
                undoAsked -> notes(),
                turned -> turned(state, turned),
                recalled -> notes(),
                began -> notes(),
                waited -> notes(),
                passed -> notes(),
                back -> notes(),
                doubted -> doubted(state, doubted),
                corrected -> notes("The last answer was taken back. Give it again."),
                left -> notes(),
                resumed -> notes(),
                ended -> notes(),
                discarded -> notes()));
  }

  private static List<String> notes(String... notes) {
    return new ArrayList<>(List.of(notes));
  }

  private static List<String> read(
      State state, Event.Read read, @Nullable Kind kind, @Nullable Window window) {
    List<String> notes = notes();
    if (read.quantity() == Quantity.RELIEF) {
      reading(state, read, kind, window, notes);
    }
    return notes;
  }

  private static List<String> doubted(State state, Event.Doubted doubted) {
    return state.started().role() == Role.TECHNICIAN
        ? notes(doubted.why(), "From here this stage goes step by step, in full words.")
        : notes(doubted.why());
  }

  private static List<String> turned(State state, Event.Turned turned) {
    TurnMade made = state.history().lastTurn();
    if (made == null || turned.turn().turns() == 0) {
      return notes();
    }
    // A technician reads by name what went stale.
    List<String> notes =
        state.started().role() == Role.TECHNICIAN
            ? notes()
            : notes("After the turn every reading is stale: relief, action and intonation.");
    if (made.turn().size().turns() > made.asked().size().turns() + 0.01) {
      notes.add("That was more than was asked. It counts, and the next reading tells its effect.");
    } else if (made.turn().turns() * made.asked().turns() < 0) {
      notes.add("That was the other way than was asked. It counts, and the next reading tells.");
    }
    return notes;
  }

  /** The last event that was not written by the engine's own accord; else the start. */
  static Event lastAnswer(State state) {
    Event last =
        Lists.last(
            state.log(),
            event ->
                !(event instanceof Event.Accepted
                    || event instanceof Event.Offered
                    || event instanceof Event.WaitBegan
                    || event instanceof Event.Passed));
    return last == null ? state.started() : last;
  }

  private static void reading(
      State state,
      Event.Read read,
      @Nullable Kind kind,
      @Nullable Window window,
      List<String> notes) {
    Bracket bracket = read.bracket();
    // Decisions rest on the lowest string; the highest is only held against it.
    if (bracket == null || kind == null || window == null || read.which() != Which.LOWEST) {
      return;
    }
    String string =
        read.string() == null ? "" : " on " + Blanks.called(state, kind, read.string(), false);
    notes.add(
        "Relief"
            + string
            + ": "
            + bracket
            + ". Range: "
            + window
            + ". "
            + verdict(bracket, window));
    List<Reading> readings = state.history().readings();
    Event before =
        Lists.last(
            state.log(),
            event ->
                event instanceof Event.OnRod
                    || (event instanceof Event.Read one
                        && one != read
                        && one.bracket() != null
                        && one.which() == Which.LOWEST
                        && one.quantity() == Quantity.RELIEF));
    // What the turn did is told by the first reading after it.
    if (before instanceof Event.OnRod && readings.get(readings.size() - 1).counts()) {
      answered(state, bracket, notes);
    }
  }

  private static String verdict(Bracket bracket, Window window) {
    return switch (Verdict.of(bracket, window)) {
      case TOUCHES ->
          bracket.equals(Bracket.touches())
              ? "The string touches: there is no relief, and there may be back bow."
              : "There is hardly any relief, if any.";
      case BELOW -> "That is too little.";
      case IN -> "That is in range.";
      case ABOVE -> "That is too much.";
      case UNDECIDED -> "The reading straddles the edge of the range, so it decides nothing yet.";
      case NOT_MEASURED -> "";
    };
  }

  private static void answered(State state, Bracket bracket, List<String> notes) {
    TurnMade made = state.history().lastTurn();
    if (made == null || made.expected() == null) {
      return;
    }
    String expected =
        "Expected after " + EngineQuestions.made(made.turn()) + ": " + range(made.expected());
    notes.add(
        expected
            + ". "
            + switch (state.history().response()) {
              case MOVED -> compare(bracket, made.expected(), made.turn().turns() > 0);
              case NO_ANSWER -> "The neck has not answered the turn.";
              case WRONG_WAY -> "The neck moved the wrong way.";
              case UNSEEN -> "Whether the neck answered can't be seen from this reading.";
              case NOT_TURNED -> "";
            });
  }

  private static String compare(Bracket bracket, Prompt.Expected expected, boolean tightened) {
    if (bracket.highMm() >= expected.lowMm() && bracket.lowMm() <= expected.highMm()) {
      return "The neck did that.";
    }
    boolean lower = bracket.highMm() < expected.lowMm();
    return lower == tightened
        ? "The neck moved the right way, further than expected."
        : "The neck moved the right way, less than expected.";
  }

  /** A range of relief in words: "0.30 to 0.45 mm", "up to 0.12 mm, or still touching". */
  static String range(Prompt.Expected expected) {
    String high = Decimals.print(expected.highMm(), 2) + " mm";
    return Double.isInfinite(expected.lowMm())
        ? "up to " + high + ", or still touching"
        : Decimals.print(expected.lowMm(), 2) + " to " + high;
  }

  /** Whether a quantity was read after the last turn. */
  private static boolean readSince(State state, Quantity quantity) {
    return state.history().readings().stream()
        .anyMatch(
            r ->
                r.read().quantity() == quantity
                    && r.turnsBefore() == state.history().turns().size());
  }

  /** Notes on the values that the instrument was found at and is left at. */
  static List<String> closing(State state) {
    List<String> notes = new ArrayList<>();
    Bracket first = null;
    Bracket last = null;
    for (Reading reading : state.history().readings()) {
      if (reading.relief() && reading.read().which() == Which.LOWEST) {
        first = first == null ? reading.read().bracket() : first;
        last = reading.read().bracket();
      }
    }
    if (first != null && last != null) {
      notes.add("Relief as found: " + first + "; last reading: " + last + ".");
    }
    long moves = state.history().turns().stream().filter(made -> made.turn().turns() != 0).count();
    if (moves > 0) {
      String count = moves == 1 ? "one move" : moves + " moves";
      notes.add("The rod stands " + Blanks.net(state) + ", after " + count + ".");
      if (!readSince(state, Quantity.ACTION)) {
        notes.add("Action and intonation are stale since the rod was turned.");
      }
    }
    notes.add("The instrument stands like this: " + Standing.of(state) + ".");
    return notes;
  }
}
