package quarterturn.session;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Decimals;

/** A session as a face sees it: a prompt, a way to answer it, and what is always visible. */
public interface Bench {
  /** The present prompt. Everything that led to it is on disk. */
  Prompt prompt();

  /**
   * Records an answer and moves on to the next prompt.
   *
   * @throws RefusedException when the prompt does not take the answer; the prompt stays
   * @throws IOException when it could not be written; the prompt stays
   */
  void answer(Answer answer) throws RefusedException, IOException;

  /** The instrument, the place in the procedure and the readings and turns so far. */
  Overview overview();

  /** The session's clock. */
  Instant now();

  /**
   * Sets the session's clock, which runs on from there.
   *
   * @throws RefusedException when {@code at} lies before the last event
   */
  void setClock(Instant at) throws RefusedException;

  /**
   * Records that the person leaves, and returns the state that the instrument is left in ("rod
   * turned, strings not yet back at pitch").
   */
  String leave() throws IOException;

  /** The state that the instrument would be left in now. */
  String standing();

  /** News about the last answer, as in the prompt's notes. */
  default List<String> news() {
    return prompt().said().notes();
  }

  /** What the readings of this session can plausibly be, in their units, over all its steps. */
  default Map<Quantity, Plausible> plausible() {
    return Map.of();
  }

  /** The least and the most that a reading can plausibly be, in its quantity's unit. */
  record Plausible(double least, double most) {
    public boolean holds(double value) {
      return value >= least - 1e-9 && value <= most + 1e-9;
    }

    /** Both ranges together, and what lies between them. */
    public Plausible with(Plausible other) {
      return new Plausible(Math.min(least, other.least), Math.max(most, other.most));
    }

    /** That a value is outside this range. */
    public String doubt(Quantity quantity, double value) {
      String said = Decimals.plain(value) + " " + quantity.unit() + " ";
      return said + lies(quantity) + " Check the gauge and the unit, and read again.";
    }

    /** The same of a value that is named before, in the rest of a sentence. */
    public String lies(Quantity quantity) {
      return "is not plausible for "
          + quantity.said()
          + ", which lies between "
          + Decimals.plain(least)
          + " and "
          + Decimals.plain(most)
          + " "
          + quantity.unit()
          + ".";
    }
  }

  /** What is on record of how the instrument is made, of which this session asks nothing. */
  default List<OnRecord> recorded() {
    return List.of();
  }

  /**
   * An answer on record.
   *
   * @param step id of the step that would ask for it
   */
  record OnRecord(Recorded what, String step, String answer) {}

  /** Whether the prompt is a line of a pause, where a recorded value has to be said once more. */
  default boolean saysAgain() {
    return false;
  }

  /** The steps that will follow the prompt for certain, one line each. */
  default List<String> upcoming() {
    return List.of();
  }

  /**
   * The option ids of every step with a choice, by the id of the step; an empty list where a step
   * takes words.
   */
  default Map<String, List<String>> choices() {
    return Map.of();
  }
}
