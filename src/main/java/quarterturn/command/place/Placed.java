package quarterturn.command.place;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.command.face.Face;
import quarterturn.command.face.Faces;
import quarterturn.platform.UserFolders;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Settings;

/** A command that reads or writes sessions, instruments or procedures. */
@Command(addMethodSubcommands = false)
public abstract class Placed extends Timed implements Callable<Integer> {
  @Mixin protected final Where where = new Where();

  /** Gives it the folders of its user. */
  public final void of(UserFolders folders) {
    where.of(folders);
  }

  /** Opens a face, where first is said what the file of settings sets of these keys. */
  protected Face open(Faces faces, Settings.Key... keys) throws IOException {
    List<String> said = where.said(keys);
    Face face = faces.open();
    face.tell(said);
    return face;
  }

  protected Sessions sessions() {
    return where.sessions(clock);
  }
}
