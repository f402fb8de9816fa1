package quarterturn.procedure.condition;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.clause.ConditionParser;

/** A condition in the words that {@link ConditionParser} reads as the same condition. */
public final class ConditionWords {
  private ConditionWords() {}

  /**
   * A clause in two parts, so that several tails can follow one head.
   *
   * @param head what stands once: "relief", "called by"
   * @param tail what can stand several times, with "or" between
   * @param open whether another tail can follow
   */
  private record Phrase(String head, String tail, boolean open) {
    @Override
    public String toString() {
      return head + " " + tail;
    }
  }

  /**
   * A condition in words: "relief touches or below target", "play-test is open-only". One that the
   * grammar has no words for is written with "not" and brackets.
   */
  public static String of(Condition condition) {
    return condition.match(
        all -> joined(all.parts(), " and "),
        ConditionWords::clause,
        ConditionWords::clause,
        ConditionWords::clause);
  }

  private static String joined(List<Condition> parts, String between) {
    return parts.stream().map(ConditionWords::clause).collect(Collectors.joining(between));
  }

  private static String clause(Condition condition) {
    String words = written(condition);
    return words != null
        ? words
        : condition.match(
            all -> "(" + of(all) + ")",
            any -> "(" + joined(any.parts(), " or ") + ")",
            not -> "not (" + of(not.part()) + ")",
            atom -> "(" + of(atom) + ")");
  }

  /** A condition as the grammar writes it, or null where it has no such clause. */
  private static @Nullable String written(Condition condition) {
    return condition.match(
        all -> null,
        any -> any(any.parts(), false),
        not ->
            not.part() instanceof Condition.Any any
                ? any(any.parts(), true)
                : words(not(not.part())),
        atom -> words(atom.match(PHRASES)));
  }

  private static @Nullable String words(@Nullable Phrase phrase) {
    return phrase == null ? null : phrase.toString();
  }

  private static @Nullable String any(List<Condition> parts, boolean not) {
    String head = null;
    StringBuilder words = new StringBuilder();
    for (Condition part : parts) {
      Phrase phrase = not ? none(part) : one(part);
      if (phrase == null || !phrase.open() || (head != null && !head.equals(phrase.head()))) {
        return null;
      }
      words.append(head == null ? phrase : " or " + phrase.tail());
      head = phrase.head();
    }
    return head == null ? null : words.toString();
  }

  /** The phrase of a condition that is one of several; "was read" is the only one for a Not. */
  private static @Nullable Phrase one(Condition part) {
    return part.match(
        all -> null,
        any -> null,
        not -> not.part() instanceof Condition.Against ? not(not.part()) : null,
        atom -> atom.match(PHRASES));
  }

  /** The phrase of a condition that is one of several of which none holds. */
  private static @Nullable Phrase none(Condition part) {
    boolean several =
        part instanceof Condition.Strings
            || part instanceof Condition.Called
            || part instanceof Condition.Seems
            || part instanceof Condition.Felt;
    return several ? not(part) : null;
  }

  private static final Condition.Atom.Cases<@Nullable Phrase> PHRASES =
      new Condition.Atom.Cases<>(
          c -> new Phrase(c.quantity().word(), c.verdict().words(), true),
          c -> new Phrase(c.quantity().word(), leans(c.towards()), true),
          c -> new Phrase(c.quantity().word(), "just " + c.side().words(), true),
          c -> amount(c.quantity(), "below", c.limit()),
          c -> amount(c.quantity(), "at least", c.limit()),
          c -> amount(c.quantity(), c.more().words() + " by more than", c.limit()),
          c -> amount(c.quantity(), "repeats within", c.limit()),
          c -> new Phrase(c.quantity().word(), "may creep out of target", false),
          c -> new Phrase(c.step() + " is", options(c), false),
          c -> new Phrase("role is", c.role().word(), false),
          c -> turned(c, "at least"),
          c ->
              c.times() == 1
                  ? new Phrase("neck", c.response().words(), true)
                  : answered(c, "at least "),
          c -> strings(c, c.every() ? "every " : "some "),
          c -> new Phrase("called by", c.procedure(), true),
          c -> new Phrase("rod seems", c.doubt().words(), true),
          c -> new Phrase(c.step() + " reached", "at least " + times(c.times()), false),
          c -> new Phrase("rod felt", c.feel().word(), true));

  private static @Nullable Phrase not(Condition condition) {
    return condition instanceof Condition.Atom atom ? atom.match(NEGATED) : null;
  }

  /** The phrase for an atom that does not hold; null where the grammar has none. */
  private static final Condition.Atom.Cases<@Nullable Phrase> NEGATED =
      new Condition.Atom.Cases<>(
          c ->
              c.verdict() == Verdict.NOT_MEASURED
                  ? new Phrase(c.quantity().word(), "was read", true)
                  : null,
          leans -> null,
          near -> null,
          below -> null,
          atLeast -> null,
          c -> amount(c.quantity(), c.more().words() + " by at most", c.limit()),
          c -> amount(c.quantity(), "does not repeat within", c.limit()),
          c -> new Phrase(c.quantity().word(), "will not creep out of target", false),
          c -> new Phrase(c.step() + " is not", options(c), false),
          is -> null,
          c -> turned(c, "less than"),
          c -> answered(c, "less than "),
          c -> strings(c, c.every() ? "not every " : "no "),
          c -> new Phrase("not called by", c.procedure(), true),
          c -> new Phrase("rod does not seem", c.doubt().words(), true),
          c -> new Phrase(c.step() + " reached", "less than " + times(c.times()), false),
          c -> new Phrase("rod did not feel", c.feel().word(), true));

  private static Phrase turned(Condition.Turned c, String count) {
    String head = "turned " + c.span().words() + " " + count;
    return new Phrase(head, AmountWords.of(c.least()), false);
  }

  private static Phrase answered(Condition.Answered c, String count) {
    return new Phrase("neck " + c.response().words(), count + times(c.times()), false);
  }

  private static Phrase strings(Condition.Strings c, String which) {
    return new Phrase(which + c.quantity().word(), c.verdict().words(), !c.every());
  }

  private static Phrase amount(Quantity quantity, String comparison, double limit) {
    return new Phrase(quantity.word() + " " + comparison, AmountWords.of(quantity, limit), false);
  }

  private static String leans(Verdict towards) {
    return switch (towards) {
      case IN -> "leans into target";
      case UNDECIDED -> "leans nowhere";
      default -> "leans " + towards.words();
    };
  }

  /**
   * The options of a choice in words; one called "not" does not come first, where it would turn the
   * sense.
   */
  private static String options(Condition.Chosen chosen) {
    Comparator<String> notLast = Comparator.comparing("not"::equals);
    return chosen.options().stream()
        .sorted(notLast.thenComparing(Comparator.naturalOrder()))
        .collect(Collectors.joining(" or "));
  }

  private static String times(int times) {
    return times + (times == 1 ? " time" : " times");
  }
}
