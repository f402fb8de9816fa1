package quarterturn.line;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.report.Paragraph;
import quarterturn.session.Program;
import quarterturn.unit.Printable;

/** Prints paragraphs wrapped to the width there is, with nothing in them that moves a cursor. */
final class Paper {
  private static final Pattern ITEM = Pattern.compile("\\d+\\. ");

  private final PrintWriter out;
  private final LineSource place;

  /** Prints to {@code out}, as wide as {@code place} is. */
  Paper(PrintWriter out, LineSource place) {
    this.out = out;
    this.place = place;
  }

  void say(List<String> paragraphs) {
    print(wrapped(paragraphs));
  }

  /** Prints paragraphs from another thread while somebody may be typing. */
  void meanwhile(List<String> paragraphs) {
    if (!paragraphs.isEmpty()) {
      place.meanwhile(out, wrapped(paragraphs));
    }
  }

  private List<String> wrapped(List<String> paragraphs) {
    List<String> lines = new ArrayList<>();
    for (String paragraph : paragraphs) {
      for (String line : paragraph.split("\\R", -1)) {
        // The lines of a numbered item stand under its text; what is to be typed stays whole.
        Matcher item = ITEM.matcher(line);
        int hang = item.lookingAt() ? item.end() : 0;
        lines.addAll(
            line.startsWith(Program.here().call() + " ")
                ? List.of(Printable.of(line))
                : Paragraph.wrap(line, Math.max(20, place.width()), hang));
      }
    }
    return lines;
  }

  /** Prints lines unwrapped, since columns matter in them. */
  void print(List<String> lines) {
    lines.forEach(out::println);
    out.flush();
  }

  void say(String paragraph) {
    say(List.of(paragraph));
  }
}
