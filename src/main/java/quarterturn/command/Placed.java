package quarterturn.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** A command that works where things are kept. */
@Command
abstract class Placed extends Timed implements Callable<Integer> {
  @Mixin final Where where = new Where();

  Desk desk() {
    return where.desk(clock);
  }
}
