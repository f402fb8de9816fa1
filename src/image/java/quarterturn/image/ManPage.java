package quarterturn.image;

import java.util.List;
import quarterturn.command.CommandTree;
import quarterturn.command.CommandTree.Word;

/** The manual's page, from the same texts as {@code --help}. */
final class ManPage {
  private ManPage() {}

  /**
   * @param version the program's
   * @param date of the build, as 2026-01-31
   */
  static String of(CommandTree program, String version, String date) {
    StringBuilder out = new StringBuilder();
    out.append(".TH QUARTERTURN 1 \"%s\" \"quarterturn %s\"\n".formatted(date, version));
    out.append(".SH NAME\nquarterturn \\- ");
    out.append(text(program.brief())).append("\n");
    out.append(".SH SYNOPSIS\n").append(text(program.synopsis())).append("\n");
    out.append(".SH DESCRIPTION\n");
    paragraphs(program.about(), out);
    out.append(".SH OPTIONS\n");
    words(program, out);
    out.append(".SH COMMANDS\n");
    for (CommandTree one : program.all()) {
      if (!one.path().isEmpty()) {
        out.append(".SS ").append(text(String.join(" ", one.path()))).append("\n");
        out.append(text(one.synopsis())).append("\n.PP\n");
        paragraphs(one.about(), out);
        words(one, out);
        paragraphs(one.footer(), out);
      }
    }
    out.append(".SH NOTES\n");
    paragraphs(program.footer(), out);
    return out.toString();
  }

  private static void paragraphs(List<String> lines, StringBuilder out) {
    for (String line : lines) {
      out.append(line.isBlank() ? ".PP" : text(line)).append("\n");
    }
  }

  private static void words(CommandTree one, StringBuilder out) {
    for (Word place : one.places()) {
      out.append(".TP\n").append(text(place.label())).append("\n");
      out.append(text(place.about())).append("\n");
    }
    for (Word option : one.options()) {
      String value = option.taking() ? "=" + option.label() : "";
      out.append(".TP\n.B ").append(text(String.join(", ", option.names()) + value)).append("\n");
      out.append(text(option.about())).append("\n");
    }
  }

  /** Text for roff: a backslash, a dash and a line's first point mean something else there. */
  private static String text(String text) {
    String escaped = text.replace("\\", "\\e").replace("-", "\\-");
    return escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped;
  }
}
