package quarterturn.command;

import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import quarterturn.platform.StandardStreams;
import quarterturn.procedure.read.Shelf;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.journal.Journal;

/**
 * Makes ready what a command will need, once and for all, while the first thread is busy with the
 * words that were typed, or with the terminal. It changes nothing but when that is done; what goes
 * wrong is met again by whoever needs it.
 */
public final class Ahead {
  private Ahead() {}

  /** Begins with what these words of a command line will need. */
  public static void of(String... words) {
    switch (words.length == 0 ? "" : words[0]) {
      case "" -> begin(Ahead::home);
      case "start", "resume", "rehearse" -> begin(Ahead::session);
      case "due" -> begin(() -> new Shelf(null).outline());
      default -> {
        // What is needed is read at once, or depends on more than the first word.
      }
    }
  }

  private static Object home() throws Exception {
    if (StandardStreams.areATerminal()) {
      Surface.prepare();
    }
    return new Shelf(null).outline();
  }

  private static Object session() throws Exception {
    Journal.prepare();
    return Shelf.program();
  }

  private static void begin(Callable<?> work) {
    Thread thread = new Thread(new FutureTask<>(work), "make ready");
    thread.setDaemon(true);
    thread.start();
  }
}
