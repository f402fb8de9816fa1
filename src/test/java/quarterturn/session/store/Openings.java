package quarterturn.session.store;

import java.io.IOException;
import java.time.ZoneOffset;
import quarterturn.procedure.UnreadableException;
import quarterturn.unit.Dates;

/** Begins and resumes sessions with answers to what is open about other records. */
public final class Openings {
  private Openings() {}

  public static Sessions.Opened start(Sessions sessions, Sessions.Wish wish, String... answers)
      throws IOException, UnreadableException {
    return sessions.open(answered(sessions.beginning(wish), answers));
  }

  public static Sessions.Opened resume(Sessions sessions, String session, String... answers)
      throws IOException, UnreadableException {
    return sessions.open(answered(sessions.beginning(session), answers));
  }

  /** Resumes a session of which no other record is, as the person says. */
  public static Sessions.Opened resumeAnother(Sessions sessions, String session)
      throws IOException, UnreadableException {
    Beginning beginning = sessions.beginning(session);
    return sessions.open(
        beginning.opening().whichOpen() ? answered(beginning, "another") : answered(beginning));
  }

  private static Beginning answered(Beginning beginning, String... answers) throws IOException {
    OpeningDialogue dialogue = new OpeningDialogue(beginning, new Dates(ZoneOffset.UTC));
    for (String answer : answers) {
      if (dialogue.question() == null) {
        throw new AssertionError("nothing was asked; the answer would have been " + answer);
      }
      dialogue.take(answer);
    }
    if (dialogue.question() != null) {
      throw new AssertionError("it is open: " + dialogue.question());
    }
    return dialogue.answered();
  }
}
