package quarterturn.procedure.check.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;

/** The rule that what a turn needs is established by an answer that says so, where others don't. */
public final class DoubtfulFact {
  public static final Rule RULE =
      Rule.ofSteps(
          "doubtful-fact",
          "What a turn needs is established by an answer that is sure, and there is another answer.",
          DoubtfulFact::prove);

  private static final Pattern DOUBT =
      Pattern.compile(
          "\\b(none|not|no|can't|cannot|don't|never|unsure|maybe|perhaps|could|might|think|guess"
              + "|probably|almost|nearly|somehow|a bit|half way|halfway|partly|roughly|wobbles"
              + "|(?<!hardly )rocks)\\b");

  private DoubtfulFact() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (step instanceof Step.Choose choose) {
      Set<Fact> always = new HashSet<>(proof.limits().turnNeeds());
      choose.options().forEach(option -> always.retainAll(option.establishes()));
      if (!always.isEmpty()) {
        found.add(
            step,
            "whatever is answered at " + step.id() + ", " + always.iterator().next().meaning(),
            "add an answer for whoever is not sure, which establishes nothing");
      }
      choose.options().forEach(option -> doubtful(proof, step, option, found));
    }
    for (Fact fact : proof.limits().turnNeeds()) {
      if (step.establishes().contains(fact)) {
        found.add(
            step, step.id() + " has it that " + fact.meaning() + ", and nobody is asked", "ask it");
      }
    }
  }

  private static void doubtful(Proof proof, Step step, Step.Option option, Findings found) {
    List<Fact> needed =
        proof.limits().turnNeeds().stream().filter(option.establishes()::contains).toList();
    if (needed.size() > 1) {
      found.add(
          step,
          "\"" + option.label() + "\" establishes two things at once that a turn needs",
          "ask for each in a step of its own");
    }
    if (!needed.isEmpty() && DOUBT.matcher(option.label().toLowerCase(Locale.ROOT)).find()) {
      found.add(
          step,
          "\"" + option.label() + "\" establishes that " + needed.get(0).meaning(),
          "let only an answer that is sure establish it");
    }
  }
}
