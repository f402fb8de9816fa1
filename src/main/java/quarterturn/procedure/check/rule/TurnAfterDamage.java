package quarterturn.procedure.check.rule;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;

/** The rule that whoever finds damage is not led on to a turn of the rod. */
public final class TurnAfterDamage {
  public static final Rule RULE =
      Rule.ofSteps(
          "turn-after-damage",
          "An answer that tells of damage leads to no turn of the rod, and to no end as if all were well.",
          TurnAfterDamage::prove);

  private static final Pattern DAMAGE =
      Pattern.compile("\\b(cracks?|cracked|creaks?|creaked|splits?|lifting|came loose)\\b");

  private static final Pattern NONE =
      Pattern.compile("\\b(no|none|nothing|not|never|neither|without|don't)\\b");

  private TurnAfterDamage() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (step instanceof Step.Choose choose) {
      for (Step.Option option : choose.options()) {
        String label = option.label().toLowerCase(Locale.ROOT);
        boolean damage = DAMAGE.matcher(label).find() && !NONE.matcher(label).find();
        if (damage && well(proof, option.go())) {
          found.add(
              step,
              "the answer \"" + option.label() + "\" leads to an end as if all were well",
              "let it lead to a hand-over, or name a repairer there");
        }
        if (damage && turns(proof, option.go())) {
          found.add(
              step,
              "a turn of the rod can follow the answer \"" + option.label() + "\"",
              "let it lead to a hand-over");
        }
      }
    }
  }

  /** Whether it ends as done before anything else is asked, and no repairer is named. */
  private static boolean well(Proof proof, String from) {
    return Ways.reach(proof.procedure(), from, TurnAfterDamage::passed).stream()
        .map(proof.procedure()::step)
        .anyMatch(step -> step instanceof Step.Done && !step.words().text().contains("repairer"));
  }

  private static boolean passed(Step step) {
    return step instanceof Step.Tell || step instanceof Step.Straight;
  }

  private static boolean turns(Proof proof, String from) {
    Set<String> reached = Ways.reach(proof.procedure(), from, any -> true);
    return reached.stream().map(proof.procedure()::step).anyMatch(proof::turns);
  }
}
