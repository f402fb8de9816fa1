package quarterturn.command.face;

import java.io.IOException;
import java.time.ZoneId;
import java.util.List;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.student.LessonSession;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.procedure.UnreadableException;
import quarterturn.screen.DeskFace;
import quarterturn.screen.LessonFace;
import quarterturn.screen.QuestionFace;
import quarterturn.screen.ScreenFace;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.Bench;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.Player;

/** The full-screen face on one terminal. */
final class OnScreen implements Face {
  private final Terminal terminal;
  private final Surface surface;
  private final ZoneId zone;
  private ScreenFace.Outcome outcome = new ScreenFace.Outcome(ExitStatus.DONE, "");
  private String notice = "";
  private boolean underHome;

  /** What was told before a session, to be shown on its first page. */
  private String told = "";

  OnScreen(Terminal terminal, Surface surface, ZoneId zone) {
    this.terminal = terminal;
    this.surface = surface;
    this.zone = zone;
  }

  @Override
  public Dialogue.End ask(Dialogue dialogue) throws InterruptedException {
    return QuestionFace.run(surface, dialogue, underHome);
  }

  @Override
  public void underHome(boolean now) {
    underHome = now;
  }

  @Override
  public void tell(List<String> lines) {
    told = String.join(" ", lines);
  }

  @Override
  public int play(Bench bench, @Nullable String notice) throws IOException, InterruptedException {
    this.notice = notice == null ? "" : "Notice: " + notice + "\n";
    outcome = ScreenFace.run(surface, bench, zone, told, underHome);
    return outcome.status();
  }

  @Override
  public int watch(Player player) throws IOException, InterruptedException {
    outcome = ScreenFace.watch(surface, player, zone, told);
    return outcome.status();
  }

  @Override
  public int lesson(LessonSession session, String again, String welcome)
      throws IOException, UnreadableException, InterruptedException {
    outcome = LessonFace.run(surface, session, again, zone, told);
    return outcome.status();
  }

  @Override
  public int desk(DeskDialogue dialogue) throws IOException, InterruptedException {
    outcome = DeskFace.run(surface, dialogue);
    return outcome.status();
  }

  @Override
  public void close() throws IOException {
    try (terminal) {
      surface.close();
      ScreenFace.say(terminal, notice + outcome.farewell());
    }
  }
}
