package quarterturn.command;

import java.io.IOException;
import java.util.Map;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.store.Beginning;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.session.store.OpeningDialogue;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.session.store.WhichInstrument;
import quarterturn.unit.Dates;

/** Plays a session from the questions about other records to its end. */
final class Begun {
  private Begun() {}

  /** Opens a face, resumes a session on it and plays it; returns the exit status. */
  static int resume(String session, Sessions sessions, Faces faces)
      throws IOException, UnreadableException, InterruptedException {
    Beginning beginning = sessions.beginning(session);
    try (Face face = faces.open()) {
      return play(beginning, sessions, face);
    }
  }

  /**
   * Starts a session and plays it, on an instrument that is asked for where none is named.
   *
   * @return the exit status
   */
  static int start(Sessions.Wish wish, Sessions sessions, Face face)
      throws IOException, UnreadableException, InterruptedException {
    if (wish.instrument() != null) {
      return play(sessions.beginning(wish), sessions, face);
    }
    // What is wrong with the procedure is said before anything is asked.
    Library library = sessions.proven(wish.procedure());
    Store store = sessions.store();
    WhichInstrument which =
        new WhichInstrument(
            store.instruments().instruments(), library.kinds(), store.instrumentNames());
    Dialogue.End end = face.ask(which);
    String name = which.name();
    if (end != Dialogue.End.ANSWERED || name == null) {
      return left(end);
    }
    if (which.kind() != null) {
      Map<FormField, String> known = Map.of(FormField.KIND, which.kind());
      store.add(FormFields.instrument(name, sessions.clock().instant(), known));
    }
    Sessions.Wish named =
        new Sessions.Wish(wish.procedure(), name, null, wish.style(), wish.role());
    return play(sessions.beginning(named, library), sessions, face);
  }

  static int play(Beginning beginning, Sessions sessions, Face face)
      throws IOException, UnreadableException, InterruptedException {
    OpeningDialogue opening = new OpeningDialogue(beginning, new Dates(sessions.clock().getZone()));
    Dialogue.End end = face.ask(opening);
    if (end != Dialogue.End.ANSWERED) {
      return left(end);
    }
    try (Sessions.Opened opened = sessions.open(opening.answered())) {
      return face.play(opened.bench(), opened.notice());
    }
  }

  private static int left(Dialogue.End end) {
    return end == Dialogue.End.INTERRUPTED ? ExitStatus.INTERRUPTED : ExitStatus.DONE;
  }
}
