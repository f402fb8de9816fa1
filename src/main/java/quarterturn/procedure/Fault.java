package quarterturn.procedure;

import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import quarterturn.unit.Printable;

/**
 * A fault at one place of a file, and how to mend it.
 *
 * @param rule id of the rule that is broken
 * @param mark where
 * @param wrong what was found, one line
 * @param mend what is allowed there, or how to mend it, one line; may be empty
 * @param line the source line, or the part of it around the place; empty where there is none
 * @param caret how many characters of {@code line} stand before the place
 * @param path ids of the steps on the shortest way that shows it; empty where no way is needed
 * @param follows what else is found, and goes with its cause
 */
public record Fault(
    String rule,
    Mark mark,
    String wrong,
    String mend,
    String line,
    int caret,
    List<String> path,
    List<Fault> follows) {
  /** The order of faults by their files, and by their places in a file. */
  public static final Comparator<Fault> BY_PLACE =
      Comparator.comparing((Fault fault) -> fault.mark().file())
          .thenComparingInt(fault -> fault.mark().line())
          .thenComparingInt(fault -> fault.mark().column());

  public Fault {
    path = List.copyOf(path);
    follows = List.copyOf(follows);
  }

  /** A fault from which nothing follows. */
  public Fault(
      String rule,
      Mark mark,
      String wrong,
      String mend,
      String line,
      int caret,
      List<String> path) {
    this(rule, mark, wrong, mend, line, caret, path, List.of());
  }

  /** This fault, with those that follow from it. */
  public Fault with(List<Fault> others) {
    return new Fault(rule, mark, wrong, mend, line, caret, path, others);
  }

  /** A fault shown without its source line. */
  public static Fault of(Slip slip, Mark mark, String wrong, String mend) {
    return new Fault(slip.word(), mark, wrong, mend, "", 0, List.of());
  }

  /**
   * The fault in one line, safe to send to a terminal: its place, what is wrong, how to mend it.
   */
  public String brief() {
    String text = mark + ": " + wrong + (mend.isEmpty() ? "" : ". " + mend);
    return Printable.of(text.matches(".*[.?!]") ? text : text + ".");
  }

  /**
   * The fault as text, safe to send to a terminal: {@code file:line:column: rule: what is wrong},
   * then the source line, a caret under the place, how to mend it, the way that shows it, and a
   * line for what follows from it.
   */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(Printable.of(mark + ": " + rule + ": " + wrong));
    if (!line.isBlank()) {
      text.append("\n").append(Printable.of(line));
      text.append("\n").append(" ".repeat(caret)).append("^");
    }
    if (!mend.isEmpty()) {
      text.append("\n  ").append(Printable.of(mend));
    }
    if (!path.isEmpty()) {
      text.append("\n  way: ").append(Printable.of(String.join(" > ", path)));
    }
    if (!follows.isEmpty()) {
      Map<String, Long> rules =
          follows.stream()
              .collect(groupingBy(Fault::rule, LinkedHashMap::new, Collectors.counting()));
      List<String> counted = new ArrayList<>();
      rules.forEach((one, times) -> counted.add(one + (times > 1 ? " " + times + " times" : "")));
      text.append("\n  and so: ").append(String.join(", ", counted));
    }
    return text.toString();
  }
}
