package quarterturn.image;

import java.util.ArrayList;
import java.util.List;
import quarterturn.command.CommandTree;
import quarterturn.command.CommandTree.Word;

/** Completion for zsh: a function for each command. */
final class ZshCompletion {
  private ZshCompletion() {}

  static String of(CommandTree program) {
    StringBuilder out = new StringBuilder("#compdef quarterturn\n");
    out.append("# Completion of quarterturn for zsh; made from its commands.\n");
    program.all().forEach(one -> function(one, out));
    return out.append("\n_quarterturn \"$@\"\n").toString();
  }

  private static String name(CommandTree one) {
    return String.join("_", "_quarterturn", String.join("_", one.path())).replaceAll("_$", "");
  }

  private static void function(CommandTree one, StringBuilder out) {
    List<String> specs = new ArrayList<>();
    one.options().forEach(option -> specs.addAll(option(option)));
    one.places().forEach(place -> specs.add(quoted("*:" + place.label() + ":" + value(place))));
    boolean more = !one.commands().isEmpty();
    if (more) {
      specs.add("'1: :->command'");
      specs.add("'*:: :->below'");
    }
    out.append("\n").append(name(one)).append("() {\n  local state line\n");
    out.append("  _arguments -s").append(more ? " -C" : "");
    specs.forEach(spec -> out.append(" \\\n    ").append(spec));
    out.append("\n");
    if (more) {
      out.append("  case $state in\n    command)\n      local -a commands=(\n");
      for (CommandTree below : one.commands()) {
        out.append("        ").append(quoted(below.name() + ":" + below.brief())).append("\n");
      }
      out.append("      )\n      _describe command commands\n      ;;\n");
      out.append("    below)\n      case $line[1] in\n");
      for (CommandTree below : one.commands()) {
        out.append("        %s) %s ;;\n".formatted(below.name(), name(below)));
      }
      out.append("      esac\n      ;;\n  esac\n");
    }
    out.append("}\n");
  }

  /** A spec for each of an option's names, each without the others. */
  private static List<String> option(Word option) {
    List<String> specs = new ArrayList<>();
    String others = option.names().size() > 1 ? "(" + String.join(" ", option.names()) + ")" : "";
    for (String name : option.names()) {
      String takes =
          !option.taking() ? "" : ":" + option.label().replace(":", "\\:") + ":" + value(option);
      String joined = option.taking() && name.startsWith("--") ? name + "=" : name;
      String about = CommandTree.brief(option.about()).replaceAll("([\\[\\]:])", "\\\\$1");
      specs.add(quoted(others + joined + "[" + about + "]" + takes));
    }
    return specs;
  }

  private static String value(Word word) {
    String values = String.join(" ", word.values());
    if (word.values().isEmpty()) {
      return word.path() ? "_files" : " ";
    }
    return word.path()
        ? "{_alternative \"words:word:(%s)\" \"files:file:_files\"}".formatted(values)
        : "(" + values + ")";
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "'\\''") + "'";
  }
}
