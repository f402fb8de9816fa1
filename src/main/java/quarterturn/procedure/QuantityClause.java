package quarterturn.procedure;

import java.util.ArrayList;
import java.util.List;
import quarterturn.unit.NotUnderstood;

/** The part of a condition that follows a quantity. */
final class QuantityClause {
  private static final String BELOW = "below";
  private static final String AT_LEAST = "at least";
  private static final String DIFFERS = "differs by more than";
  private static final String REPEATS = "repeats within";

  private final Clause words;
  private final Quantity quantity;

  QuantityClause(Clause words, Quantity quantity) {
    this.words = words;
    this.quantity = quantity;
  }

  Condition read() throws Misread {
    for (Verdict verdict : verdicts()) {
      if (words.take(verdict.words())) {
        return new Condition.Against(quantity, verdict);
      }
    }
    for (Verdict towards : leanings()) {
      if (words.take(leans(towards))) {
        return new Condition.Leans(quantity, towards);
      }
    }
    for (String comparison : comparisons()) {
      if (words.take(comparison)) {
        return compared(comparison, amount(comparison));
      }
    }
    throw words.noneOf(phrases(""), quantity.word(), phrases(" " + Amounts.example(quantity)));
  }

  private Condition compared(String comparison, double limit) {
    return switch (comparison) {
      case BELOW -> new Condition.Below(quantity, limit);
      case AT_LEAST -> new Condition.AtLeast(quantity, limit);
      case DIFFERS -> new Condition.Differs(quantity, limit);
      default -> new Condition.Repeats(quantity, limit);
    };
  }

  private double amount(String comparison) throws Misread {
    int at = words.at();
    String amount = words.takeRest();
    if (amount.isEmpty() || (comparison.equals(BELOW) && !amount.matches("[-+.,\\d].*"))) {
      String target = comparison.equals(BELOW) && quantity.bracket() ? "target or " : "";
      String found =
          amount.isEmpty() ? "something is missing here" : Quote.of(amount) + " cannot stand here";
      throw new Misread(
          at,
          found
              + ". Allowed after "
              + quantity.word()
              + " "
              + comparison
              + ": "
              + target
              + "an amount such as "
              + Amounts.example(quantity));
    }
    try {
      return Amounts.of(quantity, amount);
    } catch (NotUnderstood e) {
      throw new Misread(at, String.valueOf(e.getMessage()));
    }
  }

  /** Every phrase that can follow, with {@code amount} after those that take one. */
  private List<String> phrases(String amount) {
    List<String> phrases = new ArrayList<>();
    verdicts().forEach(verdict -> phrases.add(verdict.words()));
    leanings().forEach(towards -> phrases.add(leans(towards)));
    comparisons().forEach(comparison -> phrases.add(comparison + amount));
    return phrases;
  }

  private List<Verdict> verdicts() {
    return quantity.bracket() ? List.of(Verdict.values()) : List.of(Verdict.NOT_MEASURED);
  }

  private List<Verdict> leanings() {
    return quantity.bracket() ? List.of(Verdict.BELOW, Verdict.IN, Verdict.ABOVE) : List.of();
  }

  private List<String> comparisons() {
    return quantity.bracket()
        ? List.of(BELOW, AT_LEAST, DIFFERS, REPEATS)
        : List.of(BELOW, AT_LEAST);
  }

  private static String leans(Verdict towards) {
    return towards == Verdict.IN ? "leans into target" : "leans " + towards.words();
  }
}
