package quarterturn.procedure.read.yaml;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import quarterturn.procedure.Mark;

/** A syntax error of a file, in words for somebody who knows no YAML. */
record Syntax(Mark mark, String wrong, String mend) {
  /** The parser's words for an error, and those shown in their place. */
  private record Saying(List<String> heard, String wrong, String mend) {
    boolean fits(String said) {
      return heard.stream().anyMatch(said::contains);
    }
  }

  private static final String QUOTES = "Put the text in quotes";

  /** The sayings, of which the first that fits counts. */
  private static final List<Saying> SAYINGS =
      List.of(
          new Saying(
              List.of("mapping values are not allowed"),
              "a colon that cannot stand here",
              "Put text that holds \": \" in quotes, and indent keys of one step alike"),
          new Saying(List.of("\\t"), "a tab", "Indent with spaces"),
          new Saying(
              List.of("cannot start any token"), "text cannot begin with this character", QUOTES),
          new Saying(
              List.of("quoted scalar"),
              "in double quotes a \\ begins a code, and this is none",
              "Write \\\\ for a backslash"),
          new Saying(
              List.of("<block end>", "block collection"),
              "this line does not fit the lines above",
              "Indent it like its neighbours"),
          new Saying(
              List.of("could not find expected ':'"),
              "a key without its colon stands above",
              "Write key: value"),
          new Saying(
              List.of("flow"),
              "a comma too many, or a [ or { that does not end before here",
              "Take the comma out, or close the bracket"),
          new Saying(
              List.of("Expected a field name"),
              "this key is more than one word",
              "Write key: value"),
          new Saying(
              List.of("alias", "anchor"),
              "& and * have a meaning of their own here",
              "Put text that begins with one in quotes"),
          new Saying(
              List.of("tag", "directive", "YAML document"),
              "! and % have a meaning of their own here",
              "Put text that begins with one in quotes"),
          new Saying(
              List.of("<document start>"),
              "this does not belong to what stands above",
              "Check its indent and its colon"),
          new Saying(
              List.of("sequence entries are not allowed"),
              "a list cannot begin here",
              "Put each piece on its own line, with - before it"),
          new Saying(
              List.of("expected the node content", "mapping keys are not allowed"),
              "text cannot begin with this character",
              QUOTES),
          new Saying(
              List.of("block scalar"),
              "the text cannot begin here",
              "After | or > it begins on the next line, indented"));

  private static final Saying ANY =
      new Saying(
          List.of(),
          "this cannot be read as YAML",
          "Check the quotes, colons and indents here and above");

  /** The syntax error that an exception of the parser means. */
  static Syntax of(Source source, Exception thrown) {
    for (Throwable t = thrown; t != null; t = t.getCause()) {
      if (t instanceof MarkedYAMLException e && e.getProblemMark() != null) {
        return of(source, e);
      }
    }
    return plainly(place(source, thrown), thrown.getMessage(), null);
  }

  private static Syntax of(Source source, MarkedYAMLException e) {
    Mark problem = place(source, e.getProblemMark());
    if (e.getContextMark() == null) {
      return plainly(problem, e.getProblem(), e.getContext());
    }
    Mark context = place(source, e.getContextMark());
    String said = e.getContext() + " / " + e.getProblem();
    if (said.contains("quoted scalar") && said.contains("end of stream")) {
      return new Syntax(
          context, "the text in quotes that begins here does not end", "Put a quote at its end");
    }
    if (said.contains("flow sequence") || said.contains("flow mapping")) {
      return new Syntax(
          problem,
          "the [ or { of line " + context.line() + " does not end before here",
          "Close it, put a comma between its pieces, and put text that holds , : ? [ ] { or } in"
              + " quotes");
    }
    return plainly(problem, e.getProblem(), e.getContext());
  }

  private static Mark place(Source source, org.yaml.snakeyaml.error.Mark at) {
    return new Mark(source.file(), at.getLine() + 1, at.getColumn() + 1);
  }

  /** The place of an error: the faulty piece itself, of which the parser names only the end. */
  private static Mark place(Source source, Exception thrown) {
    JsonLocation at =
        thrown instanceof JsonProcessingException e
            ? Optional.ofNullable(e.getLocation()).orElse(JsonLocation.NA)
            : JsonLocation.NA;
    if (at.getLineNr() < 1) {
      return source.mark(0);
    }
    Mark end = new Mark(source.file(), at.getLineNr(), Math.max(1, at.getColumnNr()));
    int offset = source.offset(end);
    int start = offset;
    while (start > 0 && !Character.isWhitespace(source.at(start - 1))) {
      start--;
    }
    return source.mark(start);
  }

  private static Syntax plainly(Mark mark, @Nullable String problem, @Nullable String context) {
    String said = (problem == null ? "" : problem) + " / " + (context == null ? "" : context);
    Saying saying = SAYINGS.stream().filter(one -> one.fits(said)).findFirst().orElse(ANY);
    return new Syntax(mark, saying.wrong(), saying.mend());
  }
}
