package quarterturn.screen;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Feel;
import quarterturn.session.Prompt;

/** The answer as far as the person has got with it. */
sealed interface Draft {
  /** Nothing to draft: one key answers. */
  record Simple() implements Draft {}

  /**
   * One of several options.
   *
   * @param at index of the marked one, or -1: nothing is marked until the person marks it
   */
  record Picking(int at) implements Draft {}

  /**
   * A reading.
   *
   * @param typing whether letters go into the field
   */
  record Reading(Field field, boolean typing) implements Draft {}

  /** The rod is to be turned now. */
  record Turning() implements Draft {}

  /** It was turned: how did it feel? */
  record Feeling(int at) implements Draft {}

  /**
   * It felt like this: how much was it?
   *
   * @param otherWay whether it was turned the other way than asked
   * @param sure the text that was already asked about, or null
   */
  record Amount(Feel feel, Field field, boolean otherWay, @Nullable String sure) implements Draft {}

  /** A line of words. */
  record Writing(Field field) implements Draft {}

  /** A technician's line of readings and answers by their names. */
  record Naming(Field field) implements Draft {}

  /** Why the wait may end early. */
  record Lifting(Field field) implements Draft {}

  /** What a prompt begins with. */
  static Draft of(Prompt prompt) {
    if (prompt instanceof Prompt.Choose) {
      return new Picking(-1);
    }
    if (prompt instanceof Prompt.Measure) {
      return new Reading(Field.EMPTY, true);
    }
    if (prompt instanceof Prompt.Write) {
      return new Writing(Field.EMPTY);
    }
    return prompt instanceof Prompt.TurnRod ? new Turning() : new Simple();
  }

  /** Whether letters are typed, so that they can't be commands. */
  default boolean typing() {
    return (this instanceof Reading reading && reading.typing())
        || this instanceof Amount
        || this instanceof Writing
        || this instanceof Naming
        || this instanceof Lifting;
  }

  /** The field letters go into, or null. */
  default @Nullable Field field() {
    if (this instanceof Reading reading) {
      return reading.field();
    }
    if (this instanceof Amount amount) {
      return amount.field();
    }
    if (this instanceof Writing writing) {
      return writing.field();
    }
    if (this instanceof Naming naming) {
      return naming.field();
    }
    return this instanceof Lifting lifting ? lifting.field() : null;
  }
}
