package quarterturn.session.store;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;
import quarterturn.unit.Printable;

/**
 * Which file of the user's own a session's procedure stands in, by the record and now.
 *
 * @param own the folder of the user's own procedures and rules, or null
 */
record OwnFolder(@Nullable Path own) {
  /**
   * The whole path of the user's own file that a procedure stands in, or null for one that came
   * with the program.
   *
   * @param named what it was asked for by: its id or the path of a file
   */
  @Nullable String file(String named, String id) {
    Path file = named.toLowerCase(Locale.ROOT).endsWith(".yaml") ? Path.of(named) : standing(id);
    return file == null ? null : file.toAbsolutePath().normalize().toString();
  }

  /**
   * A sentence on where a session's procedure came from and how to go on, where that was a file of
   * the user's own and none stands in the present folder; else null.
   */
  @Nullable String lost(Event.Started session) {
    String id = session.procedure();
    if (session.from() == null || standing(id) != null) {
      return null;
    }
    // No Path: what another system wrote may be none here.
    File file = new File(session.from());
    File procedures = file.getParentFile();
    File folder = procedures == null ? null : procedures.getParentFile();
    boolean there = file.isFile();
    boolean inFolder = folder != null && file.equals(in(folder.toPath(), id).toFile());
    return Printable.of(
        "this session follows "
            + id
            + " from "
            + file
            + (there ? "" : ", which is not there")
            + "; start with --own "
            + (there && inFolder ? folder : "DIR, the folder with procedures/" + id + ".yaml"));
  }

  private @Nullable Path standing(String procedure) {
    Path file = own == null ? null : in(own, procedure);
    return file != null && Files.isRegularFile(file) ? file : null;
  }

  private static Path in(Path folder, String procedure) {
    return folder.resolve("procedures").resolve(procedure + ".yaml");
  }
}
