package quarterturn.image;

import java.util.ArrayList;
import java.util.List;
import quarterturn.command.CommandTree;
import quarterturn.command.CommandTree.Word;

/** Completion for bash. */
final class BashCompletion {
  private BashCompletion() {}

  static String of(CommandTree program) {
    StringBuilder paths = new StringBuilder();
    StringBuilder values = new StringBuilder();
    StringBuilder words = new StringBuilder();
    for (CommandTree one : program.all()) {
      String path = String.join(" ", one.path());
      if (!path.isEmpty()) {
        paths.append("      ").append('"').append(path).append("\") path=$next ;;\n");
      }
      for (Word option : one.options()) {
        value(path, option, values);
      }
      words.append("    \"%s\") words=\"%s\" ;;\n".formatted(path, String.join(" ", words(one))));
    }
    return """
        # Completion of quarterturn for bash; made from its commands.
        _quarterturn() {
          local cur=${COMP_WORDS[COMP_CWORD]} prev=${COMP_WORDS[COMP_CWORD-1]}
          local path= next= words= word i
          for ((i = 1; i < COMP_CWORD; i++)); do
            next="${path:+$path }${COMP_WORDS[i]}"
            case $next in
        @paths@    esac
          done
          if [[ $prev == "=" ]]; then
            prev=${COMP_WORDS[COMP_CWORD-2]}
          elif [[ $cur == "=" ]]; then
            cur=
          fi
          case "$path $prev" in
        @values@  esac
          case $path in
        @words@  esac
          COMPREPLY=($(compgen -W "$words" -- "$cur"))
        }
        complete -o default -F _quarterturn quarterturn
        """
        .replace("@paths@", paths)
        .replace("@values@", values)
        .replace("@words@", words);
  }

  private static List<String> words(CommandTree one) {
    List<String> words = new ArrayList<>();
    one.commands().forEach(below -> words.add(below.name()));
    one.places().forEach(place -> words.addAll(place.values()));
    one.options().forEach(option -> words.addAll(option.names()));
    return words;
  }

  /** What may follow an option that takes a value: its values, else a path, else nothing. */
  private static void value(String path, Word option, StringBuilder out) {
    if (!option.taking()) {
      return;
    }
    String all = String.join(" ", option.values());
    String reply =
        !option.values().isEmpty()
            ? "COMPREPLY=($(compgen -W \"" + all + "\" -- \"$cur\"))"
            : option.path() ? "COMPREPLY=()" : "compopt +o default; COMPREPLY=()";
    for (String name : option.names()) {
      out.append("    \"%s %s\") %s; return ;;\n".formatted(path, name, reply));
    }
  }
}
