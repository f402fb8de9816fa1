package quarterturn.procedure.read.clause;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Quote;

/** A count in a condition: "at least 2 times", "less than 2 times". */
record Count(String words, int times) {
  /** The words that a count begins with. */
  static final List<String> BEGINNINGS = List.of("at least", "less than");

  /** {@code atLeast} for a count "at least", and its opposite for one "less than". */
  Condition of(Condition atLeast) {
    return of(words, atLeast);
  }

  /** The condition of a count that begins with {@code beginning}, one of {@link #BEGINNINGS}. */
  static Condition of(String beginning, Condition atLeast) {
    return beginning.equals("less than") ? new Condition.Not(atLeast) : atLeast;
  }

  /** Takes a count, or returns null where none comes next. */
  static @Nullable Count next(Clause words) throws MisreadException {
    for (String beginning : BEGINNINGS) {
      if (words.take(beginning)) {
        return new Count(beginning, times(words));
      }
    }
    return null;
  }

  private static int times(Clause words) throws MisreadException {
    int at = words.at();
    String number = words.take();
    if (!number.matches("[1-9]|1[0-9]|20")) {
      String wrong =
          number.isEmpty() ? "a count is missing here" : Quote.of(number) + " is no count";
      throw new MisreadException(at, wrong, "Write 1 to 20, for example: at least 2 times");
    }
    if (!words.take("times") && !words.take("time")) {
      throw new MisreadException(
          words.at(), "the word \"times\" is missing here", "Write for example: at least 2 times");
    }
    return Integer.parseInt(number);
  }
}
