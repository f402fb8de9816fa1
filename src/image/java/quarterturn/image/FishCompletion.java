package quarterturn.image;

import java.util.ArrayList;
import java.util.List;
import quarterturn.command.CommandTree;
import quarterturn.command.CommandTree.Word;

/** Completion for fish. */
final class FishCompletion {
  private FishCompletion() {}

  static String of(CommandTree program) {
    List<String> lines = new ArrayList<>();
    lines.add("# Completion of quarterturn for fish; made from its commands.");
    lines.add("complete -c quarterturn -f");
    for (CommandTree one : program.all()) {
      String here = "complete -c quarterturn -n '" + at(one) + "'";
      for (CommandTree below : one.commands()) {
        lines.add(here + " -a " + below.name() + " -d " + quoted(below.brief()));
      }
      for (Word place : one.places()) {
        if (!place.values().isEmpty()) {
          lines.add(here + " -a " + quoted(String.join(" ", place.values())));
        }
        if (place.path()) {
          lines.add(here + " -F");
        }
      }
      for (Word option : one.options()) {
        lines.add(here + option(option) + " -d " + quoted(CommandTree.brief(option.about())));
      }
    }
    return String.join("\n", lines) + "\n";
  }

  /** Whether it is this command's turn: its words were typed, and none of a command below it. */
  private static String at(CommandTree one) {
    List<String> tests = new ArrayList<>();
    one.path().forEach(word -> tests.add("__fish_seen_subcommand_from " + word));
    if (!one.commands().isEmpty()) {
      List<String> below = one.commands().stream().map(CommandTree::name).toList();
      tests.add("not __fish_seen_subcommand_from " + String.join(" ", below));
    }
    return String.join("; and ", tests);
  }

  private static String option(Word option) {
    StringBuilder words = new StringBuilder();
    for (String name : option.names()) {
      words.append(name.startsWith("--") ? " -l " + name.substring(2) : " -s " + name.substring(1));
    }
    if (option.taking()) {
      words.append(option.path() ? " -r -F" : " -x");
      words.append(
          option.values().isEmpty() ? "" : " -a " + quoted(String.join(" ", option.values())));
    }
    return words.toString();
  }

  private static String quoted(String text) {
    return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }
}
