package quarterturn.procedure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.NotUnderstood;
import quarterturn.unit.Turn;

/**
 * Reads the condition of a branch from words.
 *
 * <pre>
 * condition = clause { "and" clause }
 * clause    = QUANTITY STANDING { "or" STANDING }
 *           | QUANTITY "below" | "at least" AMOUNT
 *           | QUANTITY "differs by" "more than" | "at most" AMOUNT
 *           | QUANTITY "repeats within" | "does not repeat within" AMOUNT
 *           | STEP "is" | "is not" OPTION { "or" OPTION }
 *           | STEP "reached" COUNT
 *           | "role is" ROLE
 *           | "turned today" | "turned in all" "at least" | "less than" TURN
 *           | "neck" RESPONSE [ COUNT ] | "neck" RESPONSE { "or" RESPONSE }
 *           | "rod seems" | "rod does not seem" DOUBT { "or" DOUBT }
 *           | "rod felt" | "rod did not feel" FEEL { "or" FEEL }
 *           | "every" | "not every" | "some" | "no" QUANTITY VERDICT { "or" VERDICT }
 *           | "called by" | "not called by" PROCEDURE { "or" PROCEDURE }
 * STANDING  = VERDICT | "was read" | "leans nowhere"
 *           | "leans below" | "leans into" | "leans above" "target"
 * VERDICT   = "cannot be measured" | "touches" | "below target" | "in target" | "undecided"
 *           | "above target"
 * COUNT     = "at least" | "less than" N "times"
 * </pre>
 *
 * <p>Only "some" and "no" take more than one verdict. Only a quantity read as a bracket can touch,
 * stand to the target, lean, differ or repeat.
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
        Quote.of(words.take()) + " cannot stand here",
        "Allowed: \"and\" with a further condition, or the end");
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
      case "every", "some", "no" -> strings(first);
      case "called" -> called();
      case "not" -> not();
      default -> throw unknown(first, at);
    };
  }

  private static Misread unknown(String first, int at) {
    List<String> starts =
        Stream.concat(
                Arrays.stream(Quantity.values()).map(Quantity::word),
                Stream.of("every", "some", "no", "not", "role", "turned", "neck", "rod", "called"))
            .toList();
    boolean missing = first.isEmpty() || first.equals("and");
    String wrong =
        missing
            ? "a condition is missing here"
            : "a condition cannot begin with " + Quote.of(first);
    String mend =
        "It begins with one of: "
            + String.join(", ", starts)
            + ", or with a step's id followed by \"is\" or \"reached\"";
    return new Misread(at, wrong, missing ? mend : Quote.hint(first, starts, mend));
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

  /** "not called by setup", "not every action in target". */
  private Condition not() throws Misread {
    if (words.take("called")) {
      return new Condition.Not(called());
    }
    if (words.take("every")) {
      return new Condition.Not(strings("every"));
    }
    throw words.noneOf(
        List.of("called", "every"),
        "not",
        List.of("called by PROCEDURE", "every QUANTITY VERDICT"));
  }

  private Condition chosen(String step, int at) throws Misread {
    words.take("is");
    boolean not = words.take("not");
    List<NamedOption> options = new ArrayList<>();
    Set<String> ids = new LinkedHashSet<>();
    do {
      if (words.atEnd()) {
        throw new Misread(
            words.at(),
            "an option of the step " + Quote.of(step) + " is missing here",
            "Write the id of one of its options");
      }
      int place = words.at();
      String option = words.take();
      options.add(new NamedOption(option, place));
      ids.add(option);
    } while (words.take("or"));
    named.add(new Named(step, at, options));
    Condition chosen = new Condition.Chosen(step, ids);
    return not ? new Condition.Not(chosen) : chosen;
  }

  private Condition reached(String step, int at) throws Misread {
    words.take("reached");
    Count count = count();
    if (count == null) {
      List<String> shown = List.of("at least 2 times", "less than 2 times");
      throw words.noneOf(COUNTS, Quote.cut(step) + " reached", shown);
    }
    named.add(new Named(step, at, List.of()));
    return count.of(new Condition.Reached(step, count.times()));
  }

  private Condition turned() throws Misread {
    List<String> phrases = new ArrayList<>();
    for (Condition.Span span : Condition.Span.values()) {
      for (String count : COUNTS) {
        String phrase = span.words() + " " + count;
        phrases.add(phrase);
        if (words.take(phrase)) {
          return new Count(count, 0).of(new Condition.Turned(span, turn()));
        }
      }
    }
    List<String> shown = phrases.stream().map(phrase -> phrase + " 1/2 turn").toList();
    throw words.noneOf(phrases, "turned", shown);
  }

  private Turn turn() throws Misread {
    int at = words.at();
    try {
      return Amounts.turn(words.takeRest());
    } catch (NotUnderstood e) {
      throw new Misread(at, e.wrong(), Quote.sentence(e.mend()));
    }
  }

  private Condition neck() throws Misread {
    Response first = word("neck", Response.values(), Response::words);
    Count count = count();
    if (count != null) {
      return count.of(new Condition.Answered(first, count.times()));
    }
    List<Condition> parts = new ArrayList<>();
    parts.add(new Condition.Answered(first, 1));
    while (words.take("or")) {
      parts.add(new Condition.Answered(word("neck", Response.values(), Response::words), 1));
    }
    return any(parts);
  }

  private Condition strings(String which) throws Misread {
    List<Quantity> onString = Arrays.stream(Quantity.values()).filter(Quantity::onString).toList();
    Quantity quantity = word(which, onString.toArray(Quantity[]::new), Quantity::word);
    List<Condition> parts = new ArrayList<>();
    boolean more = !which.equals("every");
    do {
      Verdict verdict = word(which + " " + quantity.word(), Verdict.values(), Verdict::words);
      parts.add(new Condition.Strings(!more, quantity, verdict));
    } while (more && words.take("or"));
    return which.equals("no") ? new Condition.Not(any(parts)) : any(parts);
  }

  private Condition called() throws Misread {
    if (!words.take("by")) {
      throw words.noneOf(List.of("by"), "called", List.of("by PROCEDURE"));
    }
    List<Condition> parts = new ArrayList<>();
    do {
      int at = words.at();
      String procedure = words.take();
      if (!Scalars.isId(procedure)) {
        String wrong =
            procedure.isEmpty()
                ? "the name of a procedure is missing here"
                : Quote.of(procedure) + " is no name of a procedure";
        throw new Misread(at, wrong, "Write for example: called by setup");
      }
      parts.add(new Condition.Called(procedure));
    } while (words.take("or"));
    return any(parts);
  }

  private Condition rod() throws Misread {
    boolean unfelt = words.take("did not feel");
    if (unfelt || words.take("felt")) {
      List<Condition> parts = new ArrayList<>();
      do {
        parts.add(new Condition.Felt(word("rod felt", Feel.values(), Feel::word)));
      } while (words.take("or"));
      return unfelt ? new Condition.Not(any(parts)) : any(parts);
    }
    boolean not = words.take("does not seem");
    if (!not && !words.take("seems")) {
      List<String> shown =
          Stream.of(
                  Arrays.stream(Doubt.values()).map(doubt -> "seems " + doubt.words()),
                  Arrays.stream(Doubt.values()).map(doubt -> "does not seem " + doubt.words()),
                  Arrays.stream(Feel.values()).map(feel -> "felt " + feel.word()),
                  Arrays.stream(Feel.values()).map(feel -> "did not feel " + feel.word()))
              .flatMap(Function.identity())
              .toList();
      throw words.noneOf(List.of("seems", "does not seem", "felt", "did not feel"), "rod", shown);
    }
    String after = not ? "rod does not seem" : "rod seems";
    List<Condition> parts = new ArrayList<>();
    do {
      parts.add(new Condition.Seems(word(after, Doubt.values(), Doubt::words)));
    } while (words.take("or"));
    return not ? new Condition.Not(any(parts)) : any(parts);
  }

  private static Condition any(List<Condition> parts) {
    return parts.size() == 1 ? parts.get(0) : new Condition.Any(parts);
  }

  /** One of {@code all} by its words, which come next. */
  private <T> T word(String after, T[] all, Function<T, String> phrase) throws Misread {
    for (T one : all) {
      if (words.take(phrase.apply(one))) {
        return one;
      }
    }
    List<String> phrases = Arrays.stream(all).map(phrase).toList();
    throw words.noneOf(phrases, after, phrases);
  }

  private static final List<String> COUNTS = List.of("at least", "less than");

  /** "at least 2 times", "less than 2 times". */
  private record Count(String words, int times) {
    Condition of(Condition atLeast) {
      return words.equals("less than") ? new Condition.Not(atLeast) : atLeast;
    }
  }

  /** A count, or null where none comes next. */
  private @Nullable Count count() throws Misread {
    for (String count : COUNTS) {
      if (words.take(count)) {
        return new Count(count, times());
      }
    }
    return null;
  }

  private int times() throws Misread {
    int at = words.at();
    String number = words.take();
    if (!number.matches("[1-9][0-9]{0,2}")) {
      String wrong =
          number.isEmpty() ? "a count is missing here" : Quote.of(number) + " is no count";
      throw new Misread(at, wrong, "Write for example: at least 2 times");
    }
    if (!words.take("times") && !words.take("time")) {
      throw new Misread(
          words.at(), "the word \"times\" is missing here", "Write for example: at least 2 times");
    }
    return Integer.parseInt(number);
  }
}
