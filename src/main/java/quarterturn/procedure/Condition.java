package quarterturn.procedure;

import java.util.List;
import java.util.Set;
import quarterturn.unit.Turn;

/**
 * A condition of a branch, as {@link ConditionParser} reads it from words. Types and units are
 * settled when the file is read; the engine only evaluates.
 */
public sealed interface Condition {
  /** Every part holds. */
  record All(List<Condition> parts) implements Condition {
    public All {
      parts = List.copyOf(parts);
    }
  }

  /** At least one part holds: "relief touches or below target". */
  record Any(List<Condition> parts) implements Condition {
    public Any {
      parts = List.copyOf(parts);
    }
  }

  /** The part does not hold: "not called by setup", "relief differs by at most 0.10 mm". */
  record Not(Condition part) implements Condition {}

  /** "relief below target": the last reading of the quantity against the window. */
  record Against(Quantity quantity, Verdict verdict) implements Condition {}

  /** "relief leans into target": where the middle of an undecided bracket lies. */
  record Leans(Quantity quantity, Verdict towards) implements Condition {}

  /** "humidity below 40 %". */
  record Below(Quantity quantity, double limit) implements Condition {}

  /** "humidity at least 60 %". */
  record AtLeast(Quantity quantity, double limit) implements Condition {}

  /** "relief differs by more than 0.10 mm": lowest string against highest, whole brackets. */
  record Differs(Quantity quantity, double limit) implements Condition {}

  /** "relief repeats within 0.05 mm": the last two readings on the same string. */
  record Repeats(Quantity quantity, double limit) implements Condition {}

  /** "rod-place is sound-hole or pocket": what was chosen there. */
  record Chosen(String step, Set<String> options) implements Condition {
    public Chosen {
      options = Set.copyOf(options);
    }
  }

  /** "role is beginner". */
  record Is(Role role) implements Condition {}

  /** "turned today at least 1/2 turn", "turned in all at least 1 turn". */
  record Turned(Span span, Turn least) implements Condition {}

  /** "neck moved the wrong way", "neck gave no answer at least 2 times". */
  record Answered(Response response, int times) implements Condition {}

  /** "every action in target", "some intonation above target": the last reading of each string. */
  record Strings(boolean every, Quantity quantity, Verdict verdict) implements Condition {}

  /** "called by setup". */
  record Called(String procedure) implements Condition {}

  /** "rod seems dead": what all readings and turns together say of the rod. */
  record Seems(Doubt doubt) implements Condition {}

  /** "undecided-again reached at least 2 times". */
  record Reached(String step, int times) implements Condition {}

  /** "rod felt stiff": at the last turn. */
  record Felt(Feel feel) implements Condition {}

  /** Over what a count of turns runs. */
  enum Span {
    /** Every turn either way in the last 24 hours, added up. */
    TODAY("today"),
    /** The distance from where the rod was found, either way. */
    IN_ALL("in all");

    private final String words;

    Span(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
