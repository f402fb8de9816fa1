package quarterturn.line;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import quarterturn.session.Bench;
import quarterturn.session.Prompt;

/** Asks a person who wants to leave whether they mean it. */
final class Leaving {
  private Leaving() {}

  /** Whether the person is sure to leave; true on a pipe, where nobody can be asked back. */
  static boolean sure(Bench bench, LineSource in, Paper paper, Between between)
      throws IOException, LineSource.StopKeyException, LineSource.ChangedException {
    List<String> parting = bench.overview().parting();
    // Where nothing is half done all is kept, and how it is left is said on leaving.
    boolean halfDone = bench.prompt() instanceof Prompt.TurnRod || !parting.isEmpty();
    if (!in.typedByHand() || !halfDone) {
      return true;
    }
    if (!parting.isEmpty()) {
      paper.say("Before you leave: " + String.join(" ", parting));
    }
    paper.say(
        List.of(
            "If you leave now: " + bench.standing() + ".",
            "Leave? Type yes; anything else stays."));
    String line = in.readLine("> ", List.of("yes", "no"), LineSource.Seen.SHOWN, between::changed);
    if (line != null && between.takes(line, "")) {
      return false;
    }
    return line == null || line.strip().toLowerCase(Locale.ROOT).matches("y|yes|quit");
  }
}
