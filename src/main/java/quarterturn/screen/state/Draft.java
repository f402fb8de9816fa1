package quarterturn.screen.state;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Prompt;

/** The answer as far as the person has got with it. */
public sealed interface Draft {
  /** Whether letters are typed, so that they can't be commands. */
  boolean typing();

  /** One that keys act on. */
  sealed interface Keyed extends Draft {
    @Override
    default boolean typing() {
      return false;
    }
  }

  /** A field that letters go into. */
  sealed interface Typed extends Draft {
    @Override
    default boolean typing() {
      return true;
    }
  }

  /** Nothing to draft: one key answers. */
  record Simple() implements Keyed {}

  /**
   * One of several options.
   *
   * @param at index of the marked one, or -1: nothing is marked until the person marks it
   */
  record Picking(int at) implements Keyed {}

  /**
   * A reading.
   *
   * @param typing whether letters go into the field
   */
  record Reading(Field field, boolean typing) implements Draft {}

  /** The rod is to be turned now. */
  record Turning() implements Keyed {}

  /** The rod was turned: how did it feel? */
  record Feeling(int at) implements Keyed {}

  /**
   * The rod was turned and felt like this: how much was it?
   *
   * @param otherWay whether it was turned the other way than asked
   * @param sure the text that was already asked about, or null
   */
  record Amount(Feel feel, Field field, boolean otherWay, @Nullable String sure) implements Typed {}

  /** A line of words. */
  record Writing(Field field) implements Typed {}

  /** A technician's line of readings and answers by their names. */
  record Naming(Field field) implements Typed {}

  /** Why the wait may end early. */
  record Lifting(Field field) implements Typed {}

  /** What a prompt begins with. */
  static Draft of(Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> new Simple(),
            caution -> new Simple(),
            choose -> new Picking(-1),
            write -> new Writing(Field.EMPTY),
            measure -> new Reading(Field.EMPTY, true),
            turn -> new Turning(),
            wait -> new Simple(),
            done -> new Simple(),
            over -> new Simple()));
  }
}
