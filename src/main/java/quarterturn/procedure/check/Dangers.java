package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Step;

/** Which hazards go with a step, by what it does and by what it says. */
final class Dangers {
  private static final Pattern SPACE = Pattern.compile("\\s+");

  private Dangers() {}

  /** What of the step the hazard goes with, in words; null where it does not. */
  static @Nullable String of(Step step, Hazard hazard) {
    Set<String> does = does(step);
    for (String occasion : hazard.with()) {
      if (does.contains(occasion)) {
        return occasion;
      }
    }
    String text = plain(step.words().text());
    for (String phrase : hazard.words()) {
      if (text.contains(plain(phrase))) {
        return "the words \"" + phrase + "\"";
      }
    }
    return null;
  }

  /** Letters and single spaces, so that a line break hides nothing. */
  private static String plain(String text) {
    return SPACE.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ");
  }

  /** Everything a hazard goes with. */
  static String occasions(Hazard hazard) {
    List<String> all = new ArrayList<>(hazard.with());
    hazard.words().forEach(phrase -> all.add("\"" + phrase + "\""));
    return String.join(", ", all);
  }

  private static Set<String> does(Step step) {
    Set<String> does = new HashSet<>();
    if (step instanceof Step.TurnRod) {
      does.add("turn");
    } else if (step instanceof Step.Tell tell) {
      establishes(does, tell.establishes(), tell.changes());
    } else if (step instanceof Step.Choose choose) {
      choose.options().forEach(o -> establishes(does, o.establishes(), o.changes()));
    } else if (step instanceof Step.Adjust adjust) {
      does.add(adjust.adjustment().word());
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
