package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Quote;
import quarterturn.procedure.read.ConditionParser.Named;
import quarterturn.procedure.read.ConditionParser.NamedOption;

/** The part of a condition that follows the id of a step; the step is noted for a later check. */
record StepClause(Clause words, List<Named> named) {

  Condition chosen(String step, int at) throws MisreadException {
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

  Condition reached(String step, int at) throws MisreadException {
    words.take("reached");
    Count count = Count.next(words);
    if (count == null) {
      List<String> shown = List.of("at least 2 times", "less than 2 times");
      throw words.noneOf(Count.BEGINNINGS, Quote.cut(step) + " reached", shown);
    }
    named.add(new Named(step, at, List.of()));
    return count.of(new Condition.Reached(step, count.times()));
  }
}
