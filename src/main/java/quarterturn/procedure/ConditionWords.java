package quarterturn.procedure;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A condition in the words that {@link ConditionParser} reads as the same condition. */
public final class ConditionWords {
  private ConditionWords() {}

  /**
   * A clause, in two so that others can follow.
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
   * "relief touches or below target", "play-test is open-only". A condition that no words are read
   * as is told with "not" and brackets.
   */
  public static String of(Condition condition) {
    if (condition instanceof Condition.All all) {
      return all.parts().stream().map(ConditionWords::clause).collect(Collectors.joining(" and "));
    }
    return clause(condition);
  }

  private static String clause(Condition condition) {
    String words = written(condition);
    if (words != null) {
      return words;
    }
    if (condition instanceof Condition.Not not) {
      return "not (" + of(not.part()) + ")";
    }
    if (condition instanceof Condition.Any any) {
      return any.parts().stream()
          .map(ConditionWords::clause)
          .collect(Collectors.joining(" or ", "(", ")"));
    }
    return "(" + of(condition) + ")";
  }

  /** As the grammar has it, or null where it has no such clause. */
  private static @Nullable String written(Condition condition) {
    if (condition instanceof Condition.Any any) {
      return any(any.parts(), false);
    }
    if (condition instanceof Condition.Not not && not.part() instanceof Condition.Any any) {
      return any(any.parts(), true);
    }
    Phrase phrase = condition instanceof Condition.Not not ? not(not.part()) : phrase(condition);
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

  /** One of several, of which "was read" is the only one that is said of a Not. */
  private static @Nullable Phrase one(Condition part) {
    return part instanceof Condition.Not not && not.part() instanceof Condition.Against
        ? not(not.part())
        : phrase(part);
  }

  /** One of several of which none holds. */
  private static @Nullable Phrase none(Condition part) {
    boolean several =
        part instanceof Condition.Strings
            || part instanceof Condition.Called
            || part instanceof Condition.Seems
            || part instanceof Condition.Felt;
    return several ? not(part) : null;
  }

  private static @Nullable Phrase phrase(Condition condition) {
    if (condition instanceof Condition.Against c) {
      return new Phrase(c.quantity().word(), c.verdict().words(), true);
    } else if (condition instanceof Condition.Leans c) {
      return new Phrase(c.quantity().word(), leans(c.towards()), true);
    } else if (condition instanceof Condition.Below c) {
      return amount(c.quantity(), "below", c.limit());
    } else if (condition instanceof Condition.AtLeast c) {
      return amount(c.quantity(), "at least", c.limit());
    } else if (condition instanceof Condition.Differs c) {
      return amount(c.quantity(), "differs by more than", c.limit());
    } else if (condition instanceof Condition.Repeats c) {
      return amount(c.quantity(), "repeats within", c.limit());
    } else if (condition instanceof Condition.Chosen c) {
      return new Phrase(c.step() + " is", options(c), false);
    } else if (condition instanceof Condition.Is c) {
      return new Phrase("role is", c.role().word(), false);
    } else if (condition instanceof Condition.Turned c) {
      return new Phrase(
          "turned " + c.span().words() + " at least", AmountWords.of(c.least()), false);
    } else if (condition instanceof Condition.Answered c) {
      return c.times() == 1
          ? new Phrase("neck", c.response().words(), true)
          : new Phrase("neck " + c.response().words(), "at least " + times(c.times()), false);
    } else if (condition instanceof Condition.Strings c) {
      String which = c.every() ? "every " : "some ";
      return new Phrase(which + c.quantity().word(), c.verdict().words(), !c.every());
    } else if (condition instanceof Condition.Called c) {
      return new Phrase("called by", c.procedure(), true);
    } else if (condition instanceof Condition.Seems c) {
      return new Phrase("rod seems", c.doubt().words(), true);
    } else if (condition instanceof Condition.Reached c) {
      return new Phrase(c.step() + " reached", "at least " + times(c.times()), false);
    } else if (condition instanceof Condition.Felt c) {
      return new Phrase("rod felt", c.feel().word(), true);
    }
    return null;
  }

  private static @Nullable Phrase not(Condition condition) {
    if (condition instanceof Condition.Against c && c.verdict() == Verdict.NOT_MEASURED) {
      return new Phrase(c.quantity().word(), "was read", true);
    } else if (condition instanceof Condition.Differs c) {
      return amount(c.quantity(), "differs by at most", c.limit());
    } else if (condition instanceof Condition.Repeats c) {
      return amount(c.quantity(), "does not repeat within", c.limit());
    } else if (condition instanceof Condition.Chosen c) {
      return new Phrase(c.step() + " is not", options(c), false);
    } else if (condition instanceof Condition.Turned c) {
      return new Phrase(
          "turned " + c.span().words() + " less than", AmountWords.of(c.least()), false);
    } else if (condition instanceof Condition.Answered c) {
      return new Phrase("neck " + c.response().words(), "less than " + times(c.times()), false);
    } else if (condition instanceof Condition.Strings c) {
      String which = c.every() ? "not every " : "no ";
      return new Phrase(which + c.quantity().word(), c.verdict().words(), !c.every());
    } else if (condition instanceof Condition.Called c) {
      return new Phrase("not called by", c.procedure(), true);
    } else if (condition instanceof Condition.Seems c) {
      return new Phrase("rod does not seem", c.doubt().words(), true);
    } else if (condition instanceof Condition.Felt c) {
      return new Phrase("rod did not feel", c.feel().word(), true);
    } else if (condition instanceof Condition.Reached c) {
      return new Phrase(c.step() + " reached", "less than " + times(c.times()), false);
    }
    return null;
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

  /** An option called "not" right behind "is" would turn the sense. */
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
