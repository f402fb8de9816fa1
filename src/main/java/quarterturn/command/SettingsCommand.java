package quarterturn.command;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import quarterturn.command.place.Placed;
import quarterturn.procedure.condition.Role;
import quarterturn.session.store.Settings;
import quarterturn.session.store.Settings.Key;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/** {@code settings}. */
@Command(
    addMethodSubcommands = false,
    name = "settings",
    description = {
      "Shows your file settings.yaml, what it sets, and where each value comes from.",
      "Its keys: own, by, role and data, each as the option of that name. A folder is written in full,",
      "from ~ (your home folder), or from the file's own folder."
    })
final class SettingsCommand extends Placed {
  @Override
  public Integer call() {
    List<String> lines = new ArrayList<>();
    lines.add("file: " + file());
    for (Key key : Key.values()) {
      lines.add(key.word() + ": " + value(key));
    }
    print(lines.stream().map(Printable::of).toList());
    // What is wrong with the file, or with an option, is said behind what can be shown.
    sessions();
    return 0;
  }

  private String file() {
    Path file = where.folders().settings();
    if (file == null) {
      return "none, since the home folder is unknown";
    }
    boolean missing = Files.notExists(file, LinkOption.NOFOLLOW_LINKS);
    return file + (missing ? " (not there; write it to set own, by, role or data)" : "");
  }

  private String value(Key key) {
    Settings settings = where.settings();
    String typed = where.typed().get(key);
    String set = settings.set().get(key);
    if (typed != null) {
      return typed + " (from the option --" + key.word() + ")";
    }
    String unset = settings.faults().isEmpty() ? " (default)" : " (default; see below)";
    return set == null ? usual(key) + unset : set + " (from the file)";
  }

  private String usual(Key key) {
    if (key != Key.DATA) {
      return key == Key.ROLE ? Role.BEGINNER.word() : "none";
    }
    try {
      return where.folders().data().toString();
    } catch (NotUnderstoodException e) {
      return "unknown";
    }
  }
}
