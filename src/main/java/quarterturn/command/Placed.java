package quarterturn.command;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Settings;

/** A command that reads or writes sessions, instruments or procedures. */
@Command
abstract class Placed extends Timed implements Callable<Integer> {
  @Mixin final Where where = new Where();

  /** Opens a face, where first is said what the file of settings sets of these keys. */
  Face open(Faces faces, Settings.Key... keys) throws IOException {
    List<String> said = where.said(keys);
    Face face = faces.open();
    face.tell(said);
    return face;
  }

  Sessions sessions() {
    return where.sessions(clock);
  }
}
