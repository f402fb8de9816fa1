package quarterturn.command.data;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Command;
import quarterturn.command.place.Placed;
import quarterturn.procedure.Fault;
import quarterturn.session.store.Settings;
import quarterturn.session.store.Settings.Key;
import quarterturn.session.store.archive.FolderCheck;
import quarterturn.unit.Counted;

/** {@code data check}. */
@Command(
    addMethodSubcommands = false,
    name = "check",
    description = {
      "Reads every session, every instrument and your settings to their ends, and changes nothing.",
      "Each thing that is wrong has a line: the file, what it is, and what to do.",
      "Your own procedures have a check of their own: check."
    },
    footer = {
      "",
      "Exit status: 0 nothing is wrong, 1 findings, 2 there is no data folder to check."
    })
final class DataCheck extends Placed {
  @Override
  public Integer call() throws IOException {
    Settings settings = where.settings();
    print(settings.faults().stream().map(Fault::brief).toList());
    Path data = where.knownData();
    if (data == null) {
      notice(
          "the data folder was not checked, since the settings may name it; mend them, or say"
              + " --data DIR");
      return DataCommand.FOUND;
    }
    if (!Files.isDirectory(data)) {
      throw new FileSystemException(
          data.toString(),
          null,
          Files.exists(data)
              ? "is no folder; name another with --data DIR"
              : "there is no such folder yet; one is made for the first session or instrument");
    }
    FolderCheck.Checked checked =
        FolderCheck.of(data, others(), finding -> print(List.of(finding)));
    long found = checked.findings() + settings.faults().size();
    print(
        List.of(
            "Read "
                + Counted.of(checked.sessions(), "session")
                + " and "
                + Counted.of(checked.instruments(), "instrument")
                + ": "
                + (found == 0 ? "nothing is wrong" : Counted.of(found, "finding"))
                + "."));
    return found == 0 ? 0 : DataCommand.FOUND;
  }

  /** What may stand in the data folder and is none of its own. */
  private Set<Path> others() {
    Set<Path> others = new HashSet<>();
    Path settings = where.folders().settings();
    if (settings != null) {
      others.add(settings.toAbsolutePath().normalize());
    }
    String typed = where.typed().get(Key.OWN);
    String own = typed != null ? typed : where.settings().set().get(Key.OWN);
    if (own != null) {
      Path folder = Path.of(own).toAbsolutePath().normalize();
      others.addAll(Set.of(folder, folder.resolve("procedures"), folder.resolve("safety")));
    }
    return others;
  }
}
