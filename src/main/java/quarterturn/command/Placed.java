package quarterturn.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.session.store.Sessions;

/** A command that reads or writes sessions, instruments or procedures. */
@Command
abstract class Placed extends Timed implements Callable<Integer> {
  @Mixin final Where where = new Where();

  Sessions sessions() {
    return where.sessions(clock);
  }
}
