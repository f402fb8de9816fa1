package quarterturn.command;

import java.io.IOException;
import java.time.ZoneId;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.HomeFace;
import quarterturn.screen.ScreenFace;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.Bench;
import quarterturn.session.ExitStatus;
import quarterturn.session.Player;
import quarterturn.session.store.HomeDialogue;

/** The full-screen face on one terminal. */
final class OnScreen implements Face {
  private final Terminal terminal;
  private final Surface surface;
  private final ZoneId zone;
  private ScreenFace.Outcome outcome = new ScreenFace.Outcome(ExitStatus.DONE, "");
  private String notice = "";

  OnScreen(Terminal terminal, Surface surface, ZoneId zone) {
    this.terminal = terminal;
    this.surface = surface;
    this.zone = zone;
  }

  @Override
  public boolean ask(HomeDialogue dialogue) throws InterruptedException {
    return HomeFace.run(surface, dialogue);
  }

  @Override
  public int play(Bench bench, @Nullable String notice) throws IOException, InterruptedException {
    this.notice = notice == null ? "" : "Notice: " + notice + "\n";
    outcome = ScreenFace.run(surface, bench, zone);
    return outcome.status();
  }

  @Override
  public int watch(Player player) throws IOException, InterruptedException {
    outcome = ScreenFace.watch(surface, player, zone);
    return outcome.status();
  }

  @Override
  public void close() throws IOException {
    try (terminal) {
      surface.close();
      terminal.writer().print(notice);
      ScreenFace.say(terminal, outcome);
    }
  }
}
