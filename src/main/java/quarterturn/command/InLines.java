package quarterturn.command;

import java.io.IOException;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import quarterturn.line.AutoSource;
import quarterturn.line.DialogueLines;
import quarterturn.line.LineFace;
import quarterturn.line.LineSource;
import quarterturn.line.Typing;
import quarterturn.report.Dates;
import quarterturn.session.Bench;
import quarterturn.session.Player;
import quarterturn.session.store.HomeDialogue;

/**
 * The typed face at one terminal or pipe.
 *
 * @param zone by which times are shown
 */
record InLines(Typing typing, ZoneId zone) implements Face {
  @Override
  public boolean ask(HomeDialogue dialogue) throws IOException {
    return DialogueLines.run(dialogue, typing.source(), typing.out())
        != DialogueLines.End.INTERRUPTED;
  }

  @Override
  public int play(Bench bench, @Nullable String notice) {
    if (notice != null) {
      typing.out().println("Notice: " + notice);
    }
    return run(bench, typing.source());
  }

  @Override
  public int watch(Player player) {
    return run(player.bench(), new AutoSource(typing.source(), typing.out(), player));
  }

  private int run(Bench bench, LineSource source) {
    return LineFace.run(bench, source, typing.out(), new Dates(zone));
  }

  @Override
  public void close() throws IOException {
    typing.close();
  }
}
