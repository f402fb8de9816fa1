package quarterturn.screen.state;

import org.jspecify.annotations.Nullable;
import quarterturn.session.Prompt;

/** The answer that the person has begun to give. */
public sealed interface Draft {
  /** Whether letters are text, and not commands. */
  boolean typing();

  /** Whether no text is typed. */
  boolean blank();

  /** A draft that keys change without typing. */
  sealed interface Keyed extends Draft {
    @Override
    default boolean typing() {
      return false;
    }

    @Override
    default boolean blank() {
      return true;
    }
  }

  /** A draft that has a field for text. */
  sealed interface Typed extends Draft {
    Field field();

    @Override
    default boolean typing() {
      return true;
    }

    @Override
    default boolean blank() {
      return field().blank();
    }
  }

  /** No draft, for a prompt that one key answers. */
  record Simple() implements Keyed {}

  /**
   * A choice of one of several options.
   *
   * @param at index of the marked option, or -1 before the person has marked one
   * @param typed whether it was marked by its number, which a further digit may go on with
   */
  record Picking(int at, boolean typed) implements Keyed {
    /** A choice that was not marked by a number. */
    public Picking(int at) {
      this(at, false);
    }
  }

  /**
   * A reading being typed.
   *
   * @param typing whether letters go into the field
   */
  record Reading(Field field, boolean typing) implements Draft {
    @Override
    public boolean blank() {
      return field.blank();
    }
  }

  /** What is to be done before a rod turn, not yet done. */
  record Before() implements Keyed {}

  /**
   * The rod turn that was asked for, not yet made.
   *
   * @param back whether the person was asked to confirm that the last turn is taken back instead
   */
  record Turning(boolean back) implements Keyed {
    public Turning() {
      this(false);
    }
  }

  /**
   * How far the rod was turned, being typed, and how that felt, being marked.
   *
   * @param feel index of the marked feel, or -1 before the person has marked one
   * @param otherWay whether the rod was turned in the opposite direction
   * @param sure the unusual text that the person was already asked to confirm, or null
   */
  record Made(int feel, Field field, boolean otherWay, @Nullable String sure) implements Typed {
    public static final Made NOTHING = new Made(-1, Field.EMPTY, false, null);
  }

  /** A line of words being typed. */
  record Writing(Field field) implements Typed {}

  /** A technician's line of named readings and answers being typed. */
  record Naming(Field field) implements Typed {}

  /** The reason to end a wait early, being typed. */
  record Lifting(Field field) implements Typed {}

  /** The empty draft for a prompt. */
  static Draft of(Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> new Simple(),
            caution -> new Simple(),
            choose -> new Picking(-1),
            write -> new Writing(Field.EMPTY),
            measure -> new Reading(Field.EMPTY, true),
            turn -> turn.said().first().isEmpty() ? new Turning() : new Before(),
            wait -> new Simple(),
            done -> new Simple(),
            over -> new Simple()));
  }
}
