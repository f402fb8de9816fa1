package quarterturn.command;

import java.io.IOException;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.ExitStatus;
import quarterturn.session.store.Beginning;
import quarterturn.session.store.OpeningDialogue;
import quarterturn.session.store.Sessions;
import quarterturn.unit.Dates;

/** Plays a session from the questions about other records to its end. */
final class Begun {
  private Begun() {}

  /** Opens a face, begins or resumes a session on it and plays it; returns the exit status. */
  static int play(Beginning beginning, Sessions sessions, Faces faces)
      throws IOException, UnreadableException, InterruptedException {
    try (Face face = faces.open()) {
      return play(beginning, sessions, face);
    }
  }

  static int play(Beginning beginning, Sessions sessions, Face face)
      throws IOException, UnreadableException, InterruptedException {
    OpeningDialogue opening = new OpeningDialogue(beginning, new Dates(sessions.clock().getZone()));
    switch (face.ask(opening)) {
      case INTERRUPTED -> {
        return ExitStatus.INTERRUPTED;
      }
      case LEFT, CUT_SHORT -> {
        return ExitStatus.DONE;
      }
      default -> {
        // Whatever was said goes on record with the session's first event.
      }
    }
    try (Sessions.Opened opened = sessions.open(opening.answered())) {
      return face.play(opened.bench(), opened.notice());
    }
  }
}
