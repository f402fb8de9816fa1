package quarterturn.procedure;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** What the parser could not read, said so that somebody who knows no YAML can mend it. */
record Syntax(Mark mark, String message) {
  /** From whatever the parser threw. */
  static Syntax of(Source source, Exception thrown) {
    for (Throwable t = thrown; t != null; t = t.getCause()) {
      if (t instanceof MarkedYAMLException e && e.getProblemMark() != null) {
        return of(source, e);
      }
    }
    return new Syntax(place(source, thrown), plainly(thrown.getMessage(), null));
  }

  private static Syntax of(Source source, MarkedYAMLException e) {
    Mark problem = place(source, e.getProblemMark());
    if (e.getContextMark() == null) {
      return new Syntax(problem, plainly(e.getProblem(), e.getContext()));
    }
    Mark context = place(source, e.getContextMark());
    String said = e.getContext() + " / " + e.getProblem();
    if (said.contains("quoted scalar") && said.contains("end of stream")) {
      return new Syntax(context, "the text in quotes that begins here does not end");
    }
    if (said.contains("flow sequence") || said.contains("flow mapping")) {
      String message =
          "the [ or { of line "
              + context.line()
              + " does not end before here; close it, put a comma between its pieces, and put text"
              + " that holds , : ? [ ] { or } in quotes";
      return new Syntax(problem, message);
    }
    return new Syntax(problem, plainly(e.getProblem(), e.getContext()));
  }

  private static Mark place(Source source, org.yaml.snakeyaml.error.Mark at) {
    return new Mark(source.file(), at.getLine() + 1, at.getColumn() + 1);
  }

  /** The parser names the end of the piece it did not like; the piece itself is more use. */
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

  private static String plainly(@Nullable String problem, @Nullable String context) {
    String said = (problem == null ? "" : problem) + " / " + (context == null ? "" : context);
    if (said.contains("mapping values are not allowed")) {
      return "a colon that cannot stand here; put text that holds \": \" in quotes, and indent keys"
          + " of one step alike";
    }
    if (said.contains("\\t")) {
      return "a tab; indent with spaces";
    }
    if (said.contains("cannot start any token")) {
      return "text cannot begin with this character; put the text in quotes";
    }
    if (said.contains("quoted scalar")) {
      return "in double quotes a \\ begins a code, and this is none; write \\\\ for a backslash";
    }
    if (said.contains("<block end>") || said.contains("block collection")) {
      return "this line does not fit the lines above; indent it like its neighbours";
    }
    if (said.contains("could not find expected ':'")) {
      return "a key without its colon stands above; write key: value";
    }
    if (said.contains("flow")) {
      return "a comma too many, or a [ or { that does not end before here";
    }
    if (said.contains("Expected a field name")) {
      return "a key must be one word";
    }
    if (said.contains("alias") || said.contains("anchor")) {
      return "& and * have a meaning of their own here; put text that begins with one in quotes";
    }
    if (said.contains("tag") || said.contains("directive") || said.contains("YAML document")) {
      return "! and % have a meaning of their own here; put text that begins with one in quotes";
    }
    if (said.contains("<document start>")) {
      return "this does not belong to what stands above; check its indent and its colon";
    }
    if (said.contains("sequence entries are not allowed")) {
      return "a list cannot begin here; put each piece on its own line, with - before it";
    }
    if (said.contains("expected the node content")
        || said.contains("mapping keys are not allowed")) {
      return "text cannot begin with this character; put the text in quotes";
    }
    if (said.contains("block scalar")) {
      return "after | or > the text begins on the next line, indented";
    }
    return "this cannot be read as YAML; check the quotes, colons and indents here and above";
  }
}
