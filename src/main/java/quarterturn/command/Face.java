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

/** An open face: it asks and plays everything at one terminal or pipe until it is closed. */
interface Face extends Closeable {
  /** Puts a dialogue's questions until all are answered or the person leaves. */
  Dialogue.End ask(Dialogue dialogue) throws IOException, InterruptedException;

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

  /** Shows a lesson's board and takes its orders until it is left; returns the exit status. */
  int board(BoardDialogue dialogue) throws IOException, InterruptedException;
}
