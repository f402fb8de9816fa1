package quarterturn.reckon;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Possible;
import quarterturn.report.Paragraph;
import quarterturn.unit.Decimals;

/**
 * The result of a topic, with its explanation, to be printed as text or as JSON.
 *
 * @param keys what {@code --json} prints, in order: numbers, texts, booleans, arrays, null
 * @param says sentences, each a paragraph
 * @param picture lines of characters, or none
 * @param formula the formula and its name
 * @param assumes what the formula assumes and where it fails
 */
record Reckoned(
    Map<String, @Nullable Object> keys,
    List<String> says,
    List<String> picture,
    String formula,
    String assumes) {
  private static final int WIDTH = 80;
  private static final int HANG = 2;

  /** The result as lines of text. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    says.forEach(s -> lines.addAll(Paragraph.wrap(s, WIDTH, 0)));
    if (!picture.isEmpty()) {
      lines.add("");
      lines.addAll(picture);
    }
    lines.add("");
    lines.addAll(Paragraph.wrap("Formula: " + formula, WIDTH, HANG));
    lines.addAll(Paragraph.wrap("Assumes: " + assumes, WIDTH, HANG));
    return lines;
  }

  /** The result as JSON: numbers to twelve digits, null for one that is not finite. */
  String json() {
    Map<String, @Nullable Object> plain = new LinkedHashMap<>();
    keys.forEach((key, value) -> plain.put(key, plain(value)));
    try {
      return new ObjectMapper().writeValueAsString(plain);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException("a string can't fail to be written to", e);
    }
  }

  private static @Nullable Object plain(@Nullable Object value) {
    if (value instanceof Double number) {
      return Decimals.twelveDigits(number);
    }
    if (value instanceof double[] numbers) {
      return plain(DoubleStream.of(numbers).boxed().toList());
    }
    return value instanceof List<?> items ? items.stream().map(Reckoned::plain).toList() : value;
  }

  /** Builder of a {@link Reckoned}. */
  static final class Draft {
    private final Map<String, @Nullable Object> keys = new LinkedHashMap<>();
    private final List<String> doubts = new ArrayList<>();
    private final List<String> says = new ArrayList<>();
    private final List<String> picture = new ArrayList<>();

    Draft key(String name, @Nullable Object value) {
      keys.put(name, value);
      return this;
    }

    /** Doubts, before all else, a value that no instrument can have. */
    Draft within(Possible what, double value) {
      return what.holds(value) ? this : doubtIf(true, what.doubt(value));
    }

    /** Says a doubt before all else, once. */
    Draft doubtIf(boolean wrong, String doubt) {
      if (wrong && !doubts.contains(doubt)) {
        doubts.add(doubt);
      }
      return this;
    }

    /** Adds a sentence; an empty one says nothing. */
    Draft say(String sentence) {
      if (!sentence.isEmpty()) {
        says.add(sentence);
      }
      return this;
    }

    Draft draw(List<String> lines) {
      picture.addAll(lines);
      return this;
    }

    Reckoned by(String formula, String assumes) {
      Map<String, @Nullable Object> all = new LinkedHashMap<>();
      if (!doubts.isEmpty()) {
        all.put("doubt", String.join(" ", doubts));
      }
      all.putAll(keys);
      says.addAll(0, doubts);
      return new Reckoned(all, says, picture, formula, assumes);
    }
  }
}
