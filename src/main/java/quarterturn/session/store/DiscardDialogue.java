package quarterturn.session.store;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;

/** Asks once before a session is discarded. */
public final class DiscardDialogue implements Dialogue {
  private static final String YES = "yes";

  private final String session;
  private final String standing;
  private String answer = "";

  /**
   * A dialogue without an answer yet.
   *
   * @param standing the state that the session left its instrument in
   */
  public DiscardDialogue(String session, String standing) {
    this.session = session;
    this.standing = standing;
  }

  static Question.Choose question(String session, String standing) {
    return new Question.Choose(
        "Discard " + session + "?",
        List.of(
            "The instrument stays as it is now: " + standing + ".",
            "The session is kept and marked as discarded. You can't go on with it. What was turned"
                + " in it still counts, and a stop still holds."),
        "Discard it?",
        "Type yes or no.",
        List.of(
            new Question.Option("no", "Keep it as it is", "", ""),
            new Question.Option(YES, "Discard it", "", "")));
  }

  /** Whether the person said yes. */
  public boolean sure() {
    return answer.equals(YES);
  }

  @Override
  public @Nullable Question question() {
    return answer.isEmpty() ? question(session, standing) : null;
  }

  @Override
  public Taken take(String typed) {
    answer = question(session, standing).chosen(typed.strip().toLowerCase(Locale.ROOT));
    return Taken.SILENTLY;
  }
}
