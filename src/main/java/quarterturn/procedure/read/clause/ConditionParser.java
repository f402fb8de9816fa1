package quarterturn.procedure.read.clause;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Bounds;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.unit.Worded;

/**
 * Reads the condition of a branch from words.
 *
 * <pre>
 * condition = clause { "and" clause }
 * clause    = QUANTITY STANDING { "or" STANDING }
 *           | QUANTITY "below" | "at least" AMOUNT
 *           | QUANTITY APART "by more than" | "by at most" AMOUNT
 *           | QUANTITY "repeats within" | "does not repeat within" AMOUNT
 *           | "relief" "may creep" | "will not creep" "out of target"
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
 *           | "just below" | "just above" "target"
 * APART     = "differs" | "lowest above highest" | "highest above lowest"
 * VERDICT   = "cannot be measured" | "touches" | "below target" | "in target" | "undecided"
 *           | "above target"
 * COUNT     = "at least" | "less than" N "times"
 * </pre>
 *
 * <p>Only "some" and "no" take more than one verdict. Only a quantity read as a bracket can touch,
 * stand to the target, lean, be just outside it, differ or repeat.
 */
public final class ConditionParser {
  /**
   * A condition, and the steps it names, which can be checked once all steps are known.
   *
   * @param named in the order they stand
   */
  public record Parsed(Condition condition, List<Named> named) {}

  /**
   * A step named in a condition.
   *
   * @param at where it stands in the text
   * @param options the options of it that are named, empty for a step that is only reached
   */
  public record Named(String step, int at, List<NamedOption> options) {}

  /** An option named in a condition. */
  public record NamedOption(String option, int at) {}

  private final Clause words;
  private final Function<Quantity, Bounds> bounds;
  private final List<Named> named = new ArrayList<>();

  private ConditionParser(String text, Function<Quantity, Bounds> bounds) {
    words = new Clause(text);
    this.bounds = bounds;
  }

  /**
   * Reads {@code text}.
   *
   * @param bounds what nobody may go beyond with a quantity
   * @throws MisreadException with the place of the word that does not fit and what may stand there
   */
  public static Parsed parse(String text, Function<Quantity, Bounds> bounds)
      throws MisreadException {
    ConditionParser parser = new ConditionParser(text, bounds);
    List<Condition> parts = new ArrayList<>();
    do {
      parts.add(parser.clause());
    } while (parser.another());
    Condition whole = parts.size() == 1 ? parts.get(0) : new Condition.All(parts);
    return new Parsed(whole, List.copyOf(parser.named));
  }

  private boolean another() throws MisreadException {
    if (words.atEnd()) {
      return false;
    }
    if (words.take("and")) {
      return true;
    }
    int at = words.at();
    throw new MisreadException(
        at,
        Quote.of(words.take()) + " cannot stand here",
        "Allowed: \"and\" with a further condition, or the end");
  }

  private Condition clause() throws MisreadException {
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
        return new QuantityClause(words, quantity, bounds.apply(quantity)).read();
      }
    }
    return switch (first) {
      case "turned" -> new RodClause(words).turned();
      case "neck" -> new RodClause(words).neck();
      case "rod" -> new RodClause(words).rod();
      case "every", "some", "no" -> strings(first);
      case "called" -> called();
      case "not" -> not();
      default -> throw unknown(first, at);
    };
  }

  /** Reads what follows the id of a step, which is noted for a later check. */
  private Condition chosen(String step, int at) throws MisreadException {
    words.take("is");
    boolean not = words.take("not");
    List<NamedOption> options = new ArrayList<>();
    Set<String> ids = new LinkedHashSet<>();
    do {
      if (words.atEnd()) {
        throw new MisreadException(
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

  private Condition reached(String step, int at) throws MisreadException {
    words.take("reached");
    Count count = Count.next(words);
    if (count == null) {
      List<String> shown = List.of("at least 2 times", "less than 2 times");
      throw words.noneOf(Count.BEGINNINGS, Quote.cut(step) + " reached", shown);
    }
    named.add(new Named(step, at, List.of()));
    return count.of(new Condition.Reached(step, count.times()));
  }

  private static MisreadException unknown(String first, int at) {
    List<String> starts =
        Stream.concat(
                Worded.words(Quantity.values()).stream(),
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
    return new MisreadException(at, wrong, missing ? mend : Quote.hint(first, starts, mend));
  }

  private Condition role() throws MisreadException {
    List<String> roles = Worded.words(Role.values());
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

  /**
   * Reads a condition that begins with "not": "not called by setup", "not every action in target".
   */
  private Condition not() throws MisreadException {
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

  private Condition strings(String which) throws MisreadException {
    List<Quantity> onString = Arrays.stream(Quantity.values()).filter(Quantity::onString).toList();
    Quantity quantity = words.oneOf(which, onString.toArray(Quantity[]::new), Quantity::word);
    List<Condition> parts = new ArrayList<>();
    boolean more = !which.equals("every");
    do {
      Verdict verdict =
          words.oneOf(which + " " + quantity.word(), Verdict.values(), Verdict::words);
      parts.add(new Condition.Strings(!more, quantity, verdict));
    } while (more && words.take("or"));
    return which.equals("no") ? new Condition.Not(Clause.any(parts)) : Clause.any(parts);
  }

  private Condition called() throws MisreadException {
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
        throw new MisreadException(at, wrong, "Write for example: called by setup");
      }
      parts.add(new Condition.Called(procedure));
    } while (words.take("or"));
    return Clause.any(parts);
  }
}
