package quarterturn.command;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import quarterturn.script.AutoLines;
import quarterturn.script.ScriptFace;
import quarterturn.session.Bench;
import quarterturn.session.Player;
import quarterturn.session.store.HomeDialogue;

/** JSON lines on standard input and output. */
record InJson(ScriptFace face) implements Face {
  @Override
  public boolean ask(HomeDialogue dialogue) throws IOException {
    face.ask(dialogue);
    return true;
  }

  @Override
  public int play(Bench bench, @Nullable String notice) {
    if (notice != null) {
      // Standard output is for prompts alone.
      System.err.println("quarterturn: " + notice);
    }
    return face.run(bench);
  }

  @Override
  public int watch(Player player) {
    return new ScriptFace(new AutoLines(player), System.out).run(player.bench());
  }

  @Override
  public void close() {
    System.out.flush();
  }
}
