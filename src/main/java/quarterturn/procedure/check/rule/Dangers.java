package quarterturn.procedure.check.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Step;

/** Decides which hazards go with a step, by what it does and by what it says. */
public final class Dangers {
  private static final int SHOWN = 5;

  private final Set<String> does;
  private final String text;

  Dangers(Step step) {
    this.does = does(step);
    this.text = Hazard.plain(step.words().text());
  }

  /** What in the step the hazard goes with, in words; null where it does not go with the step. */
  @Nullable String of(Hazard hazard) {
    return hazard.occasion(does, text);
  }

  /** What a hazard goes with, in words; of the phrases those that come first say what is meant. */
  static String occasions(Hazard hazard) {
    List<String> all = new ArrayList<>(hazard.with());
    hazard.words().stream().limit(SHOWN).forEach(phrase -> all.add("\"" + phrase + "\""));
    return String.join(", ", all);
  }

  /** What a step does, in the words of a file: a turn, its facts and its changes. */
  public static Set<String> does(Step step) {
    if (step instanceof Step.TurnRod) {
      return Set.of("turn");
    }
    Set<String> does = new HashSet<>();
    establishes(does, step.establishes(), step.changes());
    if (step instanceof Step.Choose choose) {
      choose.options().forEach(o -> establishes(does, o.establishes(), o.changes()));
    }
    return does;
  }

  private static void establishes(Set<String> does, Set<Fact> facts, @Nullable String change) {
    facts.forEach(fact -> does.add(fact.word()));
    if (change != null) {
      does.add(change);
    }
  }
}
