package quarterturn.command;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import quarterturn.command.face.Face;
import quarterturn.command.face.Looks;
import quarterturn.command.place.Placed;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.store.Beginning;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Settings;

/** {@code resume [SESSION]}. */
@Command(
    addMethodSubcommands = false,
    name = "resume",
    description = "Takes an unfinished session up again.")
final class ResumeCommand extends Placed {
  @Parameters(
      arity = "0..1",
      paramLabel = "SESSION",
      description =
          "Not needed where only one is unfinished. Its name stands in: ${ROOT-COMMAND-NAME} log list")
  private @Nullable String session;

  @Mixin private final Looks looks = new Looks();

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    Sessions sessions = sessions();
    String name = session == null ? sessions.onlyUnfinished() : session;
    Beginning beginning = sessions.beginning(name);
    try (Face face = open(looks.faces(clock.getZone()), Settings.Key.values())) {
      return face.play(sessions, beginning);
    }
  }
}
