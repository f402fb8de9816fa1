package quarterturn.command;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * Joins the lines in which a help text stands in the source, so that a sentence is broken only
 * where the page ends.
 */
final class WholeSentences {
  private WholeSentences() {}

  /** Joins the help texts of a command and of all commands under it. */
  static void in(CommandLine line) {
    UsageMessageSpec usage = line.getCommandSpec().usageMessage();
    usage.description(joined(usage.description()));
    usage.footer(joined(usage.footer()));
    // An option's own lines can't be set anew, so they are sentences as they stand: a test asks.
    line.getSubcommands().values().forEach(WholeSentences::in);
  }

  /** Lines of which each that goes on in the next is joined with it. */
  static String[] joined(String... lines) {
    List<String> out = new ArrayList<>();
    for (String line : lines) {
      String before = out.isEmpty() ? "" : out.get(out.size() - 1);
      boolean open = !before.isEmpty() && !before.matches(".*[.!?:]");
      if (open && !line.isEmpty() && !Character.isUpperCase(line.codePointAt(0))) {
        out.set(out.size() - 1, before + " " + line);
      } else {
        out.add(line);
      }
    }
    return out.toArray(String[]::new);
  }
}
