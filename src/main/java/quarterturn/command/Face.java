package quarterturn.command;

import java.io.Closeable;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Bench;
import quarterturn.session.Player;
import quarterturn.session.store.HomeDialogue;

/** A face at work: all that it asks and plays is answered in one place, until it is closed. */
interface Face extends Closeable {
  /** Asks what to do; false where Ctrl-C was pressed. */
  boolean ask(HomeDialogue dialogue) throws IOException, InterruptedException;

  /**
   * Plays a session until it ends or is left, and returns the exit status.
   *
   * @param notice on its record, or null
   */
  int play(Bench bench, @Nullable String notice) throws IOException, InterruptedException;

  /** Lets a rehearsal play by itself. */
  int watch(Player player) throws IOException, InterruptedException;
}
