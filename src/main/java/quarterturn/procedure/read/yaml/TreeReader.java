package quarterturn.procedure.read.yaml;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Quote;
import quarterturn.unit.Printable;

/**
 * Reads YAML into a tree of {@link Node}s, keeping every place. The file is not trusted: tags,
 * anchors, aliases, further documents and deep nesting are refused, and whatever the parser throws
 * becomes a fault.
 */
public record TreeReader(Faults faults, YAMLParser parser) {
  private static final YAMLFactory YAML = YAMLFactory.builder().loaderOptions(options()).build();

  /** The most lists and mappings that may be nested. */
  static final int DEEPEST = 20;

  /**
   * Reads the one document of a file. Adds what is refused but can be passed over to {@code
   * faults}.
   *
   * @throws UnreadableException when reading cannot go on
   */
  static Node read(Faults faults) throws UnreadableException {
    try (YAMLParser parser = YAML.createParser(new StringReader(faults.source().text()))) {
      Node root = new TreeReader(faults, parser).document();
      if (faults.none()) {
        faults.source().tree(root);
      }
      return root;
    } catch (IOException | RuntimeException e) {
      Syntax syntax = Syntax.of(faults.source(), e);
      throw faults.stop(syntax.mark(), syntax.wrong(), syntax.mend());
    }
  }

  private static LoaderOptions options() {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Source.MOST_BYTES + 1);
    return options;
  }

  private Node document() throws IOException, UnreadableException {
    JsonToken first = parser.nextToken();
    if (first == null) {
      throw faults.stop(
          faults.source().mark(0),
          "this file is empty",
          "Begin it with keys, as in procedure: my-own");
    }
    Node root = value(first, 1);
    if (parser.nextToken() != null) {
      throw faults.stop(
          start(), "a second document begins here", "A file holds one; take out the ---");
    }
    return root;
  }

  private Node value(JsonToken token, int depth) throws IOException, UnreadableException {
    Mark mark = start();
    if (parser.isCurrentAlias()) {
      faults.add(
          Slip.NOT_YAML,
          mark,
          "an alias (*" + Quote.cut(parser.getText()) + ")",
          "Aliases are not used here; write the text out");
      return new Node.Refused(mark);
    }
    if (!token.isStructStart()) {
      return scalar(mark);
    }
    plain(mark);
    if (depth > DEEPEST) {
      throw faults.stop(
          mark,
          "lists and keys lie more than " + DEEPEST + " deep here",
          "No part of a file needs so many");
    }
    return token == JsonToken.START_OBJECT ? mapping(mark, depth) : sequence(mark, depth);
  }

  private Node mapping(Mark mark, int depth) throws IOException, UnreadableException {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    for (JsonToken t = parser.nextToken(); t == JsonToken.FIELD_NAME; t = parser.nextToken()) {
      Mark key = start();
      plain(key, raw());
      String name = parser.getText();
      if (name.equals("<<")) {
        throw faults.stop(
            key, "a merge key (<<)", "Merge keys are not used here; write the keys out");
      }
      Node value = value(parser.nextToken(), depth + 1);
      Node.Entry before = entries.putIfAbsent(name, new Node.Entry(key, value));
      if (before != null) {
        faults.add(
            Slip.NOT_YAML,
            key,
            "the key " + Quote.of(name) + " stands here a second time",
            "Keep one of them; the first is in line " + before.key().line());
      }
    }
    return new Node.Mapping(entries, mark);
  }

  private Node sequence(Mark mark, int depth) throws IOException, UnreadableException {
    List<Node> items = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      items.add(value(t, depth + 1));
    }
    return new Node.Sequence(items, mark);
  }

  private Node scalar(Mark mark) throws IOException {
    String raw = raw();
    plain(mark, raw);
    String text = parser.getText().strip();
    int[] bad =
        text.codePoints()
            .filter(c -> c != '\n' && (c == Source.LOST || !Printable.shown(c)))
            .toArray();
    if (bad.length == 0) {
      return new Node.Scalar(text, raw, mark);
    }
    // What stands unshown in the file itself has its fault already; this came by an escape.
    if (raw.indexOf(Source.LOST) < 0) {
      faults.add(
          Slip.CONTROL_CHARACTER,
          mark,
          String.format("text with a character that cannot be shown (U+%04X)", bad[0]),
          "Take it out");
    }
    return new Node.Refused(mark);
  }

  /** The text of the piece in the file, with its tag and anchor. */
  private String raw() {
    JsonLocation start = parser.currentTokenLocation();
    JsonLocation end = parser.currentLocation();
    return faults.source().between((int) start.getCharOffset(), (int) end.getCharOffset());
  }

  /**
   * Refuses a tag or anchor on a single value or key: here the parser names no anchors, and repeats
   * a mapping's tag.
   */
  private void plain(Mark mark, String raw) {
    if (raw.startsWith("!")) {
      tag(mark, firstWord(raw));
    } else if (raw.startsWith("&")) {
      anchor(mark, firstWord(raw));
    }
  }

  /** Refuses a tag or anchor on a list or mapping. */
  private void plain(Mark mark) throws IOException {
    Object tag = parser.getTypeId();
    if (tag != null) {
      tag(mark, "!" + tag.toString().replace("tag:yaml.org,2002:", "!"));
    }
    Object anchor = parser.getObjectId();
    if (anchor != null) {
      anchor(mark, "&" + anchor);
    }
  }

  private static String firstWord(String raw) {
    return raw.split("\\s", 2)[0];
  }

  private void tag(Mark mark, String word) {
    faults.add(
        Slip.NOT_YAML,
        mark,
        "a tag (" + Quote.cut(word) + ")",
        "Tags are not used here; take it out");
  }

  private void anchor(Mark mark, String word) {
    faults.add(
        Slip.NOT_YAML,
        mark,
        "an anchor (" + Quote.cut(word) + ")",
        "Take it out, and where it is used write the text out");
  }

  private Mark start() {
    JsonLocation at = parser.currentTokenLocation();
    return new Mark(faults.source().file(), at.getLineNr(), at.getColumnNr());
  }
}
