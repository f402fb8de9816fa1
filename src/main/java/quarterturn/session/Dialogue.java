package quarterturn.session;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.NotUnderstoodException;

/** Questions one after the other, each led to by the answers before it. */
public interface Dialogue {
  /** What is told or asked now, or null at the end. */
  @Nullable Question question();

  /**
   * Takes the line that answers the question.
   *
   * @throws NotUnderstoodException saying what is taken; the question stays
   * @throws RefusedException where it can't be taken any more
   */
  Taken take(String text) throws RefusedException, IOException;

  /** What completion offers while a question is answered. */
  default List<String> words() {
    return List.of();
  }

  /** Goes one question back; false where there is none. */
  default boolean back() {
    return false;
  }

  /** What is said to a person who leaves before the end. */
  default List<String> whenLeft() {
    return List.of();
  }

  /** How a dialogue ended. */
  enum End {
    ANSWERED,
    /** The person left. */
    LEFT,
    /** The input ended before the questions did. */
    CUT_SHORT,
    /** The person pressed the key that stops a program. */
    INTERRUPTED
  }

  /**
   * What an answer came to.
   *
   * @param brief that it was taken, in a few words; empty where the next question shows it
   * @param told what was asked for, or came of it
   */
  record Taken(String brief, List<String> told) {
    public static final Taken SILENTLY = new Taken("", List.of());

    public Taken {
      told = List.copyOf(told);
    }

    public static Taken briefly(String brief) {
      return new Taken(brief, List.of());
    }
  }
}
