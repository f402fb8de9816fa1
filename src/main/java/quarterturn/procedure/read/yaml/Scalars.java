package quarterturn.procedure.read.yaml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Slip;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Worded;

/**
 * Turns pieces of a file into values. A piece that is not such a value gives a fault and null; a
 * null piece (its fault is noted already) gives null.
 */
public record Scalars(Faults faults) {
  private static final Pattern ID = Pattern.compile("[a-z0-9-]+");
  private static final int LONGEST_ID = 40;

  /** The piece as a single value that is not empty. */
  public @Nullable Scalar scalar(@Nullable Node node) {
    if (node instanceof Scalar scalar && !scalar.text().isEmpty()) {
      return scalar;
    }
    if (node instanceof Scalar) {
      faults.value(
          node.mark(), "the value is missing here", "Write it behind its key, or take the key out");
    } else if (node != null && !(node instanceof Node.Refused)) {
      faults.value(
          node.mark(),
          "expected a single value here, found " + node.name(),
          "Write one value; put text that holds [ ] { } or : in quotes");
    }
    return null;
  }

  /** The piece as text of one line. */
  public @Nullable String line(@Nullable Node node) {
    Scalar scalar = scalar(node);
    if (scalar != null && scalar.text().indexOf('\n') >= 0) {
      faults.value(
          scalar.mark(),
          "this text has more than one line",
          "Write it on one, without | and breaks");
      return null;
    }
    return scalar == null ? null : scalar.text();
  }

  /** The piece as text of one line without blanks to fill in. */
  public @Nullable String fixed(@Nullable Node node) {
    Scalar scalar = scalar(node);
    if (scalar != null && (scalar.text().indexOf('{') >= 0 || scalar.text().indexOf('}') >= 0)) {
      faults.add(
          Slip.BAD_BLANK,
          scalar.mark(),
          "braces in a text into which nothing is filled",
          "Write it without them");
      return null;
    }
    return line(scalar);
  }

  /**
   * The piece as an id.
   *
   * @param what whose id, with its article: "a step"
   */
  public @Nullable Scalar id(@Nullable Node node, String what) {
    Scalar scalar = scalar(node);
    if (scalar == null) {
      return null;
    }
    if (!isId(scalar.text())) {
      faults.add(
          Slip.BAD_ID,
          scalar.mark(),
          Quote.of(scalar.text()) + " is no id of " + what,
          "Use a to z, 0 to 9 and -, at most " + LONGEST_ID + " of them");
      return null;
    }
    return scalar;
  }

  public static boolean isId(String text) {
    return text.length() <= LONGEST_ID && ID.matcher(text).matches();
  }

  /** The piece as a whole number from {@code least} to {@code most}. */
  public @Nullable Integer count(@Nullable Node node, int least, int most) {
    Scalar scalar = scalar(node);
    if (scalar == null) {
      return null;
    }
    boolean number = scalar.text().matches("-?\\d{1,9}");
    int count = number ? Integer.parseInt(scalar.text()) : 0;
    if (!number || count < least || count > most) {
      String no = !number ? "no whole number" : count < least ? "too small" : "too large";
      faults.value(
          scalar.mark(),
          Quote.of(scalar.text()) + " is " + no,
          "Write a whole number from " + least + " to " + most);
      return null;
    }
    return count;
  }

  /** The piece as {@code true} or {@code false}; false where it is neither. */
  public boolean truth(@Nullable Node node) {
    Scalar scalar = scalar(node);
    if (scalar != null && !scalar.text().equals("true") && !scalar.text().equals("false")) {
      faults.value(
          scalar.mark(),
          Quote.of(scalar.text()) + " is neither true nor false",
          "Allowed: true, false");
    }
    return scalar != null && scalar.text().equals("true");
  }

  /**
   * The one of {@code all} whose word the piece is.
   *
   * @param what what the words stand for, with its article: "a fact"
   */
  public <T> @Nullable T word(@Nullable Node node, String what, T[] all, Function<T, String> word) {
    Scalar scalar = scalar(node);
    if (scalar == null) {
      return null;
    }
    for (T one : all) {
      if (word.apply(one).equals(scalar.text())) {
        return one;
      }
    }
    unknown(Slip.UNKNOWN_WORD, scalar, what, Arrays.stream(all).map(word).toList());
    return null;
  }

  /** The one of {@code all} whose word the piece is. */
  public <T extends Worded> @Nullable T word(@Nullable Node node, String what, T[] all) {
    return word(node, what, all, Worded::word);
  }

  /** Adds the fault that {@code scalar} is not {@code what}, with those that are known. */
  public void unknown(Slip slip, Scalar scalar, String what, List<String> known) {
    faults.add(
        slip,
        scalar.mark(),
        Quote.of(scalar.text()) + " is not " + what,
        Quote.allowed(scalar.text(), known));
  }

  /** The piece as a list of words of {@code all}; empty where it is absent. */
  public <T extends Worded> Set<T> words(@Nullable Node node, String what, T[] all) {
    return new LinkedHashSet<>(each(node, item -> word(item, what, all)));
  }

  /** The piece as read by its own reader, whose complaint becomes the fault. */
  public <T> @Nullable T parsed(@Nullable Node node, Function<String, T> reader) {
    Scalar scalar = scalar(node);
    if (scalar == null) {
      return null;
    }
    try {
      return reader.apply(scalar.text());
    } catch (NotUnderstoodException e) {
      faults.value(scalar.mark(), e.wrong(), Quote.sentence(e.mend()));
      return null;
    }
  }

  /** The pieces of a list; none where it is absent or no list. */
  public List<Node> items(@Nullable Node node) {
    if (node instanceof Sequence sequence) {
      return sequence.items();
    }
    if (node != null && !(node instanceof Node.Refused)) {
      String example =
          node instanceof Scalar s && !s.text().isEmpty() ? Quote.cut(s.text()) : "...";
      faults.value(
          node.mark(),
          "expected a list here, found " + node.name(),
          "Write it as [" + example + "]");
    }
    return List.of();
  }

  /** The piece as a list of texts of one line, without blanks to fill in. */
  public List<String> fixedLines(@Nullable Node node) {
    return each(node, this::fixed);
  }

  /** What {@code read} makes of each piece of a list, without nulls. */
  public <T> List<T> each(@Nullable Node list, Function<Node, @Nullable T> read) {
    List<T> found = new ArrayList<>();
    for (Node item : items(list)) {
      T one = read.apply(item);
      if (one != null) {
        found.add(one);
      }
    }
    return found;
  }
}
