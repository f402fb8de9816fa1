package quarterturn.command;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.command.face.Face;
import quarterturn.command.face.Faces;
import quarterturn.command.face.Looks;
import quarterturn.command.place.Placed;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.store.Beginning;
import quarterturn.session.store.GoOnDialogue;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Settings;

/** {@code start relief}. */
@Command(
    addMethodSubcommands = false,
    name = "start",
    description = "Starts a procedure, for example: ${ROOT-COMMAND-NAME} start relief")
final class StartCommand extends Placed {
  @Parameters(
      arity = "0..1",
      paramLabel = "PROCEDURE",
      description = "Its name (relief), or a .yaml file.")
  private @Nullable String procedure;

  @Option(
      names = "--instrument",
      paramLabel = "NAME",
      description = "One of yours; see: ${ROOT-COMMAND-NAME} instrument list")
  private @Nullable String instrument;

  @Option(
      names = "--another",
      description = "With --instrument: begins another session beside one that is not over.")
  private boolean another;

  @Option(names = "--kind", paramLabel = "KIND", description = "For example bass-34.")
  private @Nullable String kind;

  @Option(
      names = "--style",
      paramLabel = "STYLE",
      description = "How the player plays: light, medium, hard or slide. It sets the range.")
  private @Nullable Style style;

  @Option(
      names = "--role",
      paramLabel = "ROLE",
      description = "beginner or technician; else as your settings say.")
  private @Nullable Role role;

  @Mixin private final Looks looks = new Looks();

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    complainIf(another && instrument == null, "--another goes with --instrument.");
    Sessions sessions = sessions();
    Sessions.Wish wish =
        new Sessions.Wish(
            sessions.named(procedure), instrument, kind, style, role == null ? where.role() : role);
    Faces faces = looks.faces(clock.getZone());
    boolean unnamed = kind != null || faces.kind() == Faces.Kind.SCRIPT;
    if (instrument == null && !unnamed) {
      try (Face face = open(faces, Settings.Key.values())) {
        return face.start(sessions, wish);
      }
    }
    Beginning beginning = sessions.beginning(wish);
    try (Face face = open(faces, Settings.Key.values())) {
      if (!another) {
        return face.begin(sessions, beginning);
      }
      String counting = GoOnDialogue.counting(sessions.unfinishedBeside(beginning));
      face.tell(counting.isEmpty() ? List.of() : List.of(counting));
      return face.play(sessions, beginning);
    }
  }
}
