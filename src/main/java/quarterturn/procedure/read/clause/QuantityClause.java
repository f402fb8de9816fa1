package quarterturn.procedure.read.clause;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Bounds;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.NotUnderstoodException;

/** The part of a condition that follows a quantity. */
record QuantityClause(Clause words, Quantity quantity, Bounds bounds) {
  private static final String BELOW = "below";
  private static final String AT_LEAST = "at least";
  private static final String MORE = " by more than";
  private static final String AT_MOST = " by at most";
  private static final String REPEATS = "repeats within";
  private static final String SCATTERS = "does not repeat within";
  private static final String CREEPS = "may creep out of target";
  private static final String RESTS = "will not creep out of target";
  private static final String READ = "was read";
  private static final String JUST = "just ";

  Condition read() throws MisreadException {
    List<Condition> standings = new ArrayList<>();
    for (Condition one = standing(); one != null; one = standing()) {
      standings.add(one);
      if (!words.take("or")) {
        return standings.size() == 1 ? one : new Condition.Any(standings);
      }
    }
    if (!standings.isEmpty()) {
      throw words.noneOf(standings(), quantity.word() + " ... or", standings());
    }
    for (String creep : quantity == Quantity.RELIEF ? List.of(CREEPS, RESTS) : List.<String>of()) {
      if (words.take(creep)) {
        Condition creeps = new Condition.Creeps(quantity);
        return creep.equals(CREEPS) ? creeps : new Condition.Not(creeps);
      }
    }
    for (String comparison : comparisons()) {
      if (words.take(comparison)) {
        return compared(comparison, amount(comparison));
      }
    }
    throw words.noneOf(phrases(""), quantity.word(), phrases(" " + Amounts.example(quantity)));
  }

  /** Takes how the reading stands, or returns null where that does not come next. */
  private @Nullable Condition standing() {
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
    for (Verdict side : sides()) {
      if (words.take(JUST + side.words())) {
        return new Condition.Near(quantity, side);
      }
    }
    return words.take(READ)
        ? new Condition.Not(new Condition.Against(quantity, Verdict.NOT_MEASURED))
        : null;
  }

  private Condition compared(String comparison, double limit) {
    return switch (comparison) {
      case BELOW -> new Condition.Below(quantity, limit);
      case AT_LEAST -> new Condition.AtLeast(quantity, limit);
      case REPEATS -> new Condition.Repeats(quantity, limit);
      case SCATTERS -> new Condition.Not(new Condition.Repeats(quantity, limit));
      default -> apart(comparison, limit);
    };
  }

  private Condition apart(String comparison, double limit) {
    for (Condition.Differs.More more : Condition.Differs.More.values()) {
      if (comparison.equals(more.words() + MORE)) {
        return new Condition.Differs(quantity, more, limit);
      }
      if (comparison.equals(more.words() + AT_MOST)) {
        return new Condition.Not(new Condition.Differs(quantity, more, limit));
      }
    }
    throw new IllegalArgumentException("no comparison: " + comparison);
  }

  private double amount(String comparison) throws MisreadException {
    int at = words.at();
    String amount = words.takeRest();
    if (amount.isEmpty() || (comparison.equals(BELOW) && !amount.matches("[-+.,\\d].*"))) {
      String target = comparison.equals(BELOW) && quantity.bracket() ? "target or " : "";
      String found =
          amount.isEmpty() ? "something is missing here" : Quote.of(amount) + " cannot stand here";
      String allowed = target + "an amount such as " + Amounts.example(quantity);
      String mend = "Allowed after " + quantity.word() + " " + comparison + ": " + allowed;
      throw new MisreadException(
          at, found, target.isEmpty() ? mend : Quote.hint(amount, List.of("target"), mend));
    }
    try {
      double written = Amounts.of(quantity, amount);
      boolean repeats = comparison.equals(REPEATS) || comparison.equals(SCATTERS);
      boolean differs = comparison.endsWith(MORE) || comparison.endsWith(AT_MOST);
      return repeats
          ? bounds.repeats(written)
          : differs ? bounds.differs(written) : bounds.amount(written);
    } catch (NotUnderstoodException e) {
      throw new MisreadException(at, e.wrong(), Quote.sentence(e.mend()));
    }
  }

  /** Every phrase that can follow, with {@code amount} after those that take one. */
  private List<String> phrases(String amount) {
    List<String> phrases = new ArrayList<>(standings());
    comparisons().forEach(comparison -> phrases.add(comparison + amount));
    if (quantity == Quantity.RELIEF) {
      phrases.addAll(List.of(CREEPS, RESTS));
    }
    return phrases;
  }

  private List<String> standings() {
    List<String> phrases = new ArrayList<>();
    verdicts().forEach(verdict -> phrases.add(verdict.words()));
    phrases.add(READ);
    leanings().forEach(towards -> phrases.add(leans(towards)));
    sides().forEach(side -> phrases.add(JUST + side.words()));
    return phrases;
  }

  private List<Verdict> verdicts() {
    return quantity.bracket() ? List.of(Verdict.values()) : List.of(Verdict.NOT_MEASURED);
  }

  private List<Verdict> leanings() {
    return quantity.bracket()
        ? List.of(Verdict.BELOW, Verdict.IN, Verdict.ABOVE, Verdict.UNDECIDED)
        : List.of();
  }

  private List<Verdict> sides() {
    return quantity.bracket() ? List.of(Verdict.BELOW, Verdict.ABOVE) : List.of();
  }

  private List<String> comparisons() {
    List<String> all = new ArrayList<>(List.of(BELOW, AT_LEAST));
    if (quantity.bracket()) {
      for (Condition.Differs.More more : Condition.Differs.More.values()) {
        all.addAll(List.of(more.words() + MORE, more.words() + AT_MOST));
      }
      all.addAll(List.of(REPEATS, SCATTERS));
    }
    return all;
  }

  private static String leans(Verdict towards) {
    return switch (towards) {
      case IN -> "leans into target";
      case UNDECIDED -> "leans nowhere";
      default -> "leans " + towards.words();
    };
  }
}
