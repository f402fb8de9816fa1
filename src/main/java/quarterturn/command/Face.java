package quarterturn.command;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.student.LessonSession;
import quarterturn.lesson.teacher.BoardDialogue;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Bench;
import quarterturn.session.Dialogue;
import quarterturn.session.Player;

/** A face at work: all that it asks and plays is answered in one place, until it is closed. */
interface Face extends Closeable {
  /** Asks what a dialogue asks. */
  Dialogue.End ask(Dialogue dialogue) throws IOException, InterruptedException;

  /** Tells something beside a session. */
  void tell(List<String> lines);

  /**
   * Plays a session until it ends or is left, and returns the exit status.
   *
   * @param notice on its record, or null
   */
  int play(Bench bench, @Nullable String notice) throws IOException, InterruptedException;

  /** Lets a rehearsal play by itself. */
  int watch(Player player) throws IOException, InterruptedException;

  /**
   * Plays a bench in a lesson until its sessions end or it is left, and returns the exit status.
   *
   * @param again the command by which the bench goes on later
   * @param welcome what stands at the top of a bench's page
   */
  int lesson(LessonSession session, String again, String welcome)
      throws IOException, UnreadableException, InterruptedException;

  /** Shows a lesson's board and takes its orders until it is left; returns the exit status. */
  int board(BoardDialogue dialogue) throws IOException, InterruptedException;
}
