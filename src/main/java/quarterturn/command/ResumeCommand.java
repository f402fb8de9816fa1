package quarterturn.command;

import java.io.IOException;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import quarterturn.procedure.Unreadable;

/** {@code resume [SESSION]}. */
@Command(
    name = "resume",
    mixinStandardHelpOptions = true,
    description = "Takes an unfinished session up again.")
final class ResumeCommand implements Callable<Integer>, Cli.Timed {
  @Parameters(
      arity = "0..1",
      paramLabel = "SESSION",
      description =
          "Its name, as in: quarterturn log list. Not needed where only one is unfinished.")
  private @Nullable String session;

  @Mixin private final Where where = new Where();
  @Mixin private final Looks looks = new Looks();
  private final Clock clock;

  ResumeCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException, Unreadable, InterruptedException {
    Faces faces = looks.faces();
    Desk desk = where.desk(clock);
    String name = session == null ? desk.onlyUnfinished() : session;
    try (Desk.Opened opened = desk.resume(name)) {
      return faces.play(opened);
    }
  }
}
