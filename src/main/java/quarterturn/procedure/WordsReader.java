package quarterturn.procedure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Node.Scalar;

/**
 * Reads what a step says.
 *
 * @param hazards ids of the known hazards, or null where they are not known
 */
record WordsReader(Faults faults, @Nullable List<String> hazards) {
  static final List<String> KEYS =
      List.of("text", "brief", "why", "ask", "hazards", "never-skip", "picture");

  private static final Pattern BRACES = Pattern.compile(Blank.WRITTEN.pattern() + "|[{}]");

  /** Enough to mend in one text; finding the place of each takes a walk through the text. */
  private static final int MOST_BLANKS = 20;

  /**
   * Reads the words of a step.
   *
   * @param text whether its text must be there
   */
  Words read(Fields fields, String part, boolean text) {
    Scalars values = new Scalars(faults);
    String said = text(text ? fields.required("text") : fields.optional("text"));
    List<String> ask = new ArrayList<>();
    for (Node item : values.items(fields.optional("ask"))) {
      String question = text(item);
      if (question != null) {
        ask.add(question);
      }
    }
    return new Words(
        part,
        said == null ? "" : said,
        text(fields.optional("brief")),
        text(fields.optional("why")),
        ask,
        hazards(values, fields.optional("hazards")),
        values.truth(fields.optional("never-skip")),
        values.word(fields.optional("picture"), "a picture", Picture.values(), Picture::word));
  }

  /** Text in which blanks are filled; it may have several lines. */
  @Nullable String text(@Nullable Node node) {
    Scalar scalar = new Scalars(faults).scalar(node);
    if (scalar == null) {
      return null;
    }
    List<String> known = Arrays.stream(Blank.values()).map(Blank::word).toList();
    Matcher m = BRACES.matcher(scalar.text());
    int found = 0;
    while (m.find() && found < MOST_BLANKS) {
      String name = m.group(1);
      if (name == null) {
        found++;
        add(scalar, m.start(), "a brace without its partner; blanks are written {reading}");
      } else if (!known.contains(name)) {
        found++;
        String message =
            "there is no blank {"
                + Quote.cut(name)
                + "}"
                + Quote.hint(name, known)
                + " Allowed: "
                + String.join(", ", known);
        add(scalar, m.start(), message);
      }
    }
    return scalar.text();
  }

  private void add(Scalar scalar, int at, String message) {
    faults.add(Place.within(faults.source(), scalar, at), message);
  }

  /** Ids of hazards, each of them known. */
  List<String> hazards(Scalars values, @Nullable Node node) {
    List<String> found = new ArrayList<>();
    for (Node item : values.items(node)) {
      Scalar id = values.scalar(item);
      if (id == null) {
        continue;
      }
      if (hazards != null && !hazards.contains(id.text())) {
        values.unknown(id, "a known hazard", hazards);
      }
      found.add(id.text());
    }
    return found;
  }
}
