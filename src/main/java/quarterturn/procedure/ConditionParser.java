package quarterturn.procedure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.NotUnderstood;

/**
 * Reads the condition of a branch from words.
 *
 * <pre>
 * condition = clause { "and" clause }
 * clause    = QUANTITY "cannot be measured" | "touches" | "below target" | "in target"
 *                      | "undecided" | "above target"
 *           | QUANTITY "leans" "below" | "into" | "above" "target"
 *           | QUANTITY "below" | "at least" | "differs by more than" | "repeats within" AMOUNT
 *           | STEP "is" OPTION { "or" OPTION }
 *           | STEP "reached at least" N "times"
 *           | "role is" ROLE
 *           | "turned today at least" | "turned in all at least" TURN
 *           | "neck" RESPONSE [ "at least" N "times" ]
 *           | "rod seems" DOUBT
 *           | "every" | "some" QUANTITY VERDICT
 *           | "called by" PROCEDURE
 * </pre>
 *
 * <p>Only a quantity read as a bracket can touch, stand to the target, lean, differ or repeat.
 */
final class ConditionParser {
  /**
   * A condition, and the steps it names, which can be checked once all steps are known.
   *
   * @param named in the order they stand
   */
  record Parsed(Condition condition, List<Named> named) {}

  /**
   * A step named in a condition.
   *
   * @param at where it stands in the text
   * @param options the options of it that are named, empty for a step that is only reached
   */
  record Named(String step, int at, List<NamedOption> options) {}

  /** An option named in a condition. */
  record NamedOption(String option, int at) {}

  private final Clause words;
  private final List<Named> named = new ArrayList<>();

  private ConditionParser(String text) {
    words = new Clause(text);
  }

  /**
   * Reads {@code text}.
   *
   * @throws Misread with the place of the word that does not fit and what may stand there
   */
  static Parsed parse(String text) throws Misread {
    ConditionParser parser = new ConditionParser(text);
    List<Condition> parts = new ArrayList<>();
    do {
      parts.add(parser.clause());
    } while (parser.another());
    Condition whole = parts.size() == 1 ? parts.get(0) : new Condition.All(parts);
    return new Parsed(whole, List.copyOf(parser.named));
  }

  private boolean another() throws Misread {
    if (words.atEnd()) {
      return false;
    }
    if (words.take("and")) {
      return true;
    }
    int at = words.at();
    throw new Misread(
        at,
        Quote.of(words.take()) + " cannot stand here; only \"and\" and a further condition can");
  }

  private Condition clause() throws Misread {
    int at = words.at();
    String first = words.take();
    String second = words.peek(0);
    if (first.equals("role") && !second.equals("reached")) {
      return role();
    }
    if (second.equals("reached")) {
      return reached(first, at);
    }
    if (second.equals("is")) {
      return chosen(first, at);
    }
    for (Quantity quantity : Quantity.values()) {
      if (quantity.word().equals(first)) {
        return new QuantityClause(words, quantity).read();
      }
    }
    return switch (first) {
      case "turned" -> turned();
      case "neck" -> neck();
      case "rod" -> rod();
      case "every", "some" -> strings(first);
      case "called" -> called();
      default -> throw unknown(first, at);
    };
  }

  private static Misread unknown(String first, int at) {
    List<String> starts =
        Stream.concat(
                Arrays.stream(Quantity.values()).map(Quantity::word),
                Stream.of("every", "some", "role", "turned", "neck", "rod", "called"))
            .toList();
    String what =
        first.isEmpty() || first.equals("and")
            ? "a condition is missing here."
            : "a condition cannot begin with " + Quote.of(first) + Quote.hint(first, starts);
    return new Misread(
        at,
        what
            + " It begins with one of: "
            + String.join(", ", starts)
            + ", or with a step's id followed by \"is\" or \"reached\"");
  }

  private Condition role() throws Misread {
    List<String> roles = Arrays.stream(Role.values()).map(Role::word).toList();
    if (!words.take("is")) {
      throw words.noneOf(List.of("is"), "role", List.of("is " + String.join(", is ", roles)));
    }
    for (Role role : Role.values()) {
      if (words.take(role.word())) {
        return new Condition.Is(role);
      }
    }
    throw words.noneOf(roles, "role is", roles);
  }

  private Condition chosen(String step, int at) throws Misread {
    words.take("is");
    List<NamedOption> options = new ArrayList<>();
    Set<String> ids = new LinkedHashSet<>();
    do {
      if (words.atEnd()) {
        throw new Misread(
            words.at(), "an option of the step " + Quote.of(step) + " is missing here");
      }
      int place = words.at();
      String option = words.take();
      options.add(new NamedOption(option, place));
      ids.add(option);
    } while (words.take("or"));
    named.add(new Named(step, at, options));
    return new Condition.Chosen(step, ids);
  }

  private Condition reached(String step, int at) throws Misread {
    words.take("reached");
    Integer times = times();
    if (times == null) {
      List<String> shown = List.of("at least 2 times");
      throw words.noneOf(List.of("at least"), Quote.cut(step) + " reached", shown);
    }
    named.add(new Named(step, at, List.of()));
    return new Condition.Reached(step, times);
  }

  private Condition turned() throws Misread {
    for (Condition.Span span : Condition.Span.values()) {
      String phrase = span.words() + " at least";
      if (words.take(phrase)) {
        int at = words.at();
        try {
          return new Condition.Turned(span, Amounts.turn(words.takeRest()));
        } catch (NotUnderstood e) {
          throw new Misread(at, String.valueOf(e.getMessage()));
        }
      }
    }
    List<String> phrases =
        Arrays.stream(Condition.Span.values()).map(span -> span.words() + " at least").toList();
    List<String> shown = phrases.stream().map(phrase -> phrase + " 1/2 turn").toList();
    throw words.noneOf(phrases, "turned", shown);
  }

  private Condition neck() throws Misread {
    for (Response response : Response.values()) {
      if (words.take(response.words())) {
        Integer times = times();
        return new Condition.Answered(response, times == null ? 1 : times);
      }
    }
    List<String> phrases = Arrays.stream(Response.values()).map(Response::words).toList();
    throw words.noneOf(phrases, "neck", phrases);
  }

  private Condition strings(String which) throws Misread {
    List<String> quantities =
        Arrays.stream(Quantity.values()).filter(Quantity::onString).map(Quantity::word).toList();
    for (Quantity quantity : Quantity.values()) {
      if (quantity.onString() && words.take(quantity.word())) {
        for (Verdict verdict : Verdict.values()) {
          if (words.take(verdict.words())) {
            return new Condition.Strings(which.equals("every"), quantity, verdict);
          }
        }
        List<String> verdicts = Arrays.stream(Verdict.values()).map(Verdict::words).toList();
        throw words.noneOf(verdicts, which + " " + quantity.word(), verdicts);
      }
    }
    throw words.noneOf(quantities, which, quantities);
  }

  private Condition called() throws Misread {
    if (!words.take("by")) {
      throw words.noneOf(List.of("by"), "called", List.of("by PROCEDURE"));
    }
    int at = words.at();
    String procedure = words.take();
    if (!Scalars.isId(procedure)) {
      throw new Misread(at, "the name of a procedure is missing here, as in: called by setup");
    }
    return new Condition.Called(procedure);
  }

  private Condition rod() throws Misread {
    List<String> doubts = Arrays.stream(Doubt.values()).map(Doubt::words).toList();
    if (!words.take("seems")) {
      throw words.noneOf(List.of("seems"), "rod", List.of("seems " + String.join(", ", doubts)));
    }
    for (Doubt doubt : Doubt.values()) {
      if (words.take(doubt.words())) {
        return new Condition.Seems(doubt);
      }
    }
    throw words.noneOf(doubts, "rod seems", doubts);
  }

  /** "at least 2 times", or null where that does not come next. */
  private @Nullable Integer times() throws Misread {
    if (!words.take("at least")) {
      return null;
    }
    int at = words.at();
    String number = words.take();
    if (!number.matches("[1-9][0-9]{0,2}")) {
      throw new Misread(at, Quote.of(number) + " is no count; write for example: at least 2 times");
    }
    if (!words.take("times") && !words.take("time")) {
      throw new Misread(words.at(), "the word \"times\" is missing here, as in: at least 2 times");
    }
    return Integer.valueOf(number);
  }
}
