package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Blank;
import quarterturn.procedure.Picture;
import quarterturn.procedure.Shortcut;
import quarterturn.procedure.Slip;
import quarterturn.procedure.Words;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.procedure.read.yaml.TextPosition;
import quarterturn.unit.Worded;

/**
 * Reads what a step says.
 *
 * @param hazards ids of the known hazards, or null where they are not known
 */
record WordsReader(Faults faults, References references, @Nullable List<String> hazards) {
  private static final Pattern BRACES = Pattern.compile(Blank.WRITTEN.pattern() + "|[{}]");

  private static final List<String> BLANKS = Worded.words(Blank.values());

  /**
   * Most faulty blanks told of in one text; finding the place of each takes a walk through the
   * text.
   */
  private static final int MOST_BLANKS = 20;

  /**
   * Reads the words of a step.
   *
   * @param text whether its text must be there
   */
  Words read(MappingKeys fields, String part, boolean text) {
    Scalars values = new Scalars(faults);
    String said = text(beginnerText(fields, text));
    return new Words(
        part,
        said == null ? "" : said,
        text(fields.optional("brief")),
        text(fields.optional("why")),
        new AskReader(faults, this).read(fields.optional("ask")),
        hazards(values, fields.optional("hazards")),
        values.truth(fields.optional("never-skip")),
        values.word(fields.optional("picture"), "a picture", Picture.values()),
        expects(fields),
        null);
  }

  /** The text's node; a brief wording alone is not enough, since only a technician reads that. */
  private @Nullable Node beginnerText(MappingKeys fields, boolean required) {
    Node text = fields.value("text", required && !fields.has("brief"));
    if (fields.has("brief") && text == null) {
      faults.add(
          Slip.NO_BEGINNER_TEXT,
          fields.key("brief"),
          "a technician's wording without the beginner's text",
          "Add text, which says the same to somebody who does it for the first time");
      return null;
    }
    return text;
  }

  /** Reads what becomes of a step on a technician's short path, or null. */
  @Nullable Shortcut shortcut(MappingKeys fields) {
    Shortcut.Way way =
        new Scalars(faults).word(fields.optional("short"), "a shortcut", Shortcut.Way.values());
    Node when = fields.optional("short-when");
    if (way == null && when != null && !fields.has("short")) {
      faults.add(
          Slip.MISSING_KEY,
          fields.key("short-when"),
          "short-when without short",
          "Add short: skip, or short: merge");
    }
    Condition condition = when == null ? null : forks().condition(when);
    return way == null ? null : new Shortcut(way, condition);
  }

  /** Reads what must hold whenever a step is reached: one condition, or one of several; or null. */
  @Nullable Condition expects(MappingKeys fields) {
    Node node = fields.optional("expects");
    if (!(node instanceof Node.Sequence)) {
      return forks().condition(node);
    }
    List<Condition> either = new Scalars(faults).each(node, forks()::condition);
    return either.isEmpty() ? null : new Condition.Any(either);
  }

  /** Reads text in which blanks are filled; it may have several lines. */
  @Nullable String text(@Nullable Node node) {
    Scalar scalar = new Scalars(faults).scalar(node);
    if (scalar == null) {
      return null;
    }
    if (scalar.text().indexOf('{') < 0 && scalar.text().indexOf('}') < 0) {
      return scalar.text();
    }
    Matcher m = BRACES.matcher(scalar.text());
    int found = 0;
    while (m.find() && found < MOST_BLANKS) {
      String name = m.group(1);
      if (name == null) {
        found++;
        add(
            scalar,
            m.start(),
            "a brace without its partner",
            "Write a blank as {reading}, and leave braces out of other text");
      } else if (!BLANKS.contains(name)) {
        found++;
        String wrong = "there is no blank {" + Quote.cut(name) + "}";
        add(scalar, m.start(), wrong, Quote.allowed(name, BLANKS));
      }
    }
    return scalar.text();
  }

  private void add(Scalar scalar, int at, String wrong, String mend) {
    faults.add(
        Slip.BAD_BLANK, TextPosition.within(faults.source(scalar.mark()), scalar, at), wrong, mend);
  }

  private ForkReader forks() {
    return new ForkReader(faults, references);
  }

  /** Reads ids of hazards, each of them known. */
  List<String> hazards(Scalars values, @Nullable Node node) {
    List<String> found = new ArrayList<>();
    for (Node item : values.items(node)) {
      Scalar id = values.scalar(item);
      if (id == null) {
        continue;
      }
      if (hazards != null && !hazards.contains(id.text())) {
        values.unknown(Slip.UNKNOWN_WORD, id, "a known hazard", hazards);
      }
      found.add(id.text());
    }
    return found;
  }
}
