package quarterturn.command.face;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.student.LessonSession;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.report.HomeItems;
import quarterturn.session.Bench;
import quarterturn.session.Dialogue;
import quarterturn.session.Player;
import quarterturn.session.store.Beginning;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.session.store.GoOnDialogue;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.OpeningDialogue;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.session.store.WhichInstrument;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;

/** An open face: it asks and plays everything at one terminal or pipe until it is closed. */
public interface Face extends Closeable {
  /** Puts a dialogue's questions until all are answered or the person leaves. */
  Dialogue.End ask(Dialogue dialogue) throws IOException, InterruptedException;

  /**
   * Sets whether what is asked was begun from the home view, so that going back from it leads
   * there.
   */
  default void underHome(boolean now) {}

  /** Shows lines that belong to no session. */
  void tell(List<String> lines);

  /**
   * Plays a session until it ends or is left, and returns the exit status.
   *
   * @param notice on its record, or null
   */
  int play(Bench bench, @Nullable String notice) throws IOException, InterruptedException;

  /** Plays a rehearsal without a person and returns the exit status. */
  int watch(Player player) throws IOException, InterruptedException;

  /**
   * Plays a bench in a lesson until its sessions end or it is left, and returns the exit status.
   *
   * @param again the command by which the bench goes on later
   * @param welcome what stands at the top of a bench's page
   */
  int lesson(LessonSession session, String again, String welcome)
      throws IOException, UnreadableException, InterruptedException;

  /** Shows a lesson's desk and takes its orders until it is left; returns the exit status. */
  int desk(DeskDialogue dialogue) throws IOException, InterruptedException;

  /**
   * Starts a session, on an instrument that is asked for where none is named, and plays it; returns
   * the exit status.
   */
  default int start(Sessions sessions, Sessions.Wish wish)
      throws IOException, UnreadableException, InterruptedException {
    // What is wrong with the procedure is said before anything is asked.
    Library library = sessions.proven(wish.procedure());
    if (wish.instrument() != null) {
      return begin(sessions, sessions.beginning(wish, library));
    }
    Store store = sessions.store();
    WhichInstrument which =
        new WhichInstrument(
            store.instruments().instruments(), library.kinds(), store.instrumentNames());
    Dialogue.End end = ask(which);
    String name = which.name();
    if (end != Dialogue.End.ANSWERED || name == null) {
      return end.status();
    }
    if (which.kind() != null) {
      Map<FormField, String> known = Map.of(FormField.KIND, which.kind());
      store.add(FormFields.instrument(name, sessions.clock().instant(), known));
    }
    Sessions.Wish named =
        new Sessions.Wish(wish.procedure(), name, null, wish.style(), wish.role());
    return begin(sessions, sessions.beginning(named, library));
  }

  /**
   * Asks whether to go on with what is not over on the instrument, then plays that or a new
   * session; returns the exit status.
   */
  default int begin(Sessions sessions, Beginning beginning)
      throws IOException, UnreadableException, InterruptedException {
    String instrument = beginning.wish().instrument();
    if (instrument == null) {
      return play(sessions, beginning);
    }
    List<Work> unfinished = sessions.unfinishedBeside(beginning);
    if (unfinished.isEmpty()) {
      return play(sessions, beginning);
    }
    List<HomeDialogue.Item> items =
        HomeItems.of(
            unfinished,
            List.of(),
            beginning.library().results()::title,
            sessions.clock().instant(),
            new Dates(sessions.clock().getZone()));
    GoOnDialogue which = new GoOnDialogue(instrument, items, GoOnDialogue.counting(unfinished));
    Dialogue.End end = ask(which);
    if (end != Dialogue.End.ANSWERED) {
      return end.status();
    }
    String session = which.session();
    return play(sessions, session == null ? beginning : sessions.beginning(session));
  }

  /** Asks what is open about other records, then plays a session; returns the exit status. */
  default int play(Sessions sessions, Beginning beginning)
      throws IOException, InterruptedException {
    OpeningDialogue opening = new OpeningDialogue(beginning, new Dates(sessions.clock().getZone()));
    Dialogue.End end = ask(opening);
    if (end != Dialogue.End.ANSWERED || opening.left()) {
      return end.status();
    }
    try (Sessions.Opened opened = sessions.open(opening.answered())) {
      return play(opened.bench(), opened.notice());
    }
  }
}
