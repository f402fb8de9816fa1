package quarterturn.session;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.NotUnderstoodException;

/** A series of questions, each of which depends on the answers before it. */
public interface Dialogue {
  /** The present question, or null at the end. */
  @Nullable Question question();

  /**
   * Takes a line as the answer to the question.
   *
   * @throws NotUnderstoodException saying what is taken; the question stays
   * @throws RefusedException where it can't be taken any more
   */
  Taken take(String text) throws RefusedException, IOException;

  /** The words that completion offers for the present question. */
  default List<String> words() {
    return question() instanceof Question.Choose choose
        ? choose.options().stream().map(Question.Option::name).toList()
        : List.of();
  }

  /**
   * Looks again at what the question tells of; whether it tells something else now. Where there are
   * keys, this is done from time to time while nobody answers.
   */
  default boolean lookAgain() throws IOException {
    return false;
  }

  /** Goes back to the question before; false where there is none. */
  default boolean back() {
    return false;
  }

  /** The lines told to a person who leaves before the end. */
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
    /** A line of a script was refused. */
    REFUSED,
    /** The person pressed the key that stops a program. */
    INTERRUPTED;

    /** The exit status of a program that ends here. */
    public int status() {
      return this == INTERRUPTED
          ? ExitStatus.INTERRUPTED
          : this == REFUSED ? ExitStatus.FAILED : ExitStatus.DONE;
    }
  }

  /**
   * The result of an answer.
   *
   * @param brief confirmation in a few words; empty where the next question shows it
   * @param told lines that the answer asked for or led to
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
