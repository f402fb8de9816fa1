package quarterturn.procedure.check.rule.text;

import java.util.Locale;
import java.util.regex.Pattern;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/** The rule that no words offer oil, a longer lever or a blow where a nut sits fast or creaks. */
public final class ForcedNut {
  public static final Rule RULE =
      Rule.ofSteps(
          "forced-nut",
          "No words offer oil, a longer lever or a blow for the truss rod nut, or call its creaks"
              + " ordinary.",
          ForcedNut::prove);

  private static final Pattern ROD = Pattern.compile("\\b(rod|nut|key|handle|thread)\\b");

  private static final Pattern FORCE =
      Pattern.compile(
          "\\b(oil|lubricant|grease|tube|pipe|pliers|vice|hammer|mallet|whole hand|both hands"
              + "|all your strength|longer (lever|key|arm)|long key)\\b");

  private static final Pattern SOUND =
      Pattern.compile(
          "\\b(creaks?|cracks?|ticks?|clicks?|slips?)\\b[^.]*"
              + "\\b(normal|ordinary|harmless|belongs?|usual|nothing to|go on|smooth)\\b");

  /** A feel that the words of a turn have somebody answer. */
  private static final Pattern ANSWERED =
      Pattern.compile(
          "\\b(answer|say|counts? as|called?|report|enter|choose)\\b[^.]*\\b(stiff|smooth|free)\\b");

  private static final Pattern DENIED =
      Pattern.compile(
          "\\b(no|not|never|nobody|neither|nor|don't|without|stop|instead of|ruins?|breaks?|strips?)\\b");

  private ForcedNut() {}

  private static void prove(Proof proof, Step step, Findings found) {
    boolean turns = step instanceof Step.TurnRod;
    boolean rod = turns || step.words().all().map(ForcedNut::small).anyMatch(ROD.asPredicate());
    step.words()
        .sentences()
        .filter(
            sentence ->
                turns && ANSWERED.matcher(small(sentence)).find() || rod && forces(sentence))
        .forEach(
            sentence ->
                found.add(
                    step,
                    step.id()
                        + " offers force where a nut must be left alone: \""
                        + sentence
                        + "\"",
                    "say that it is stopped at, and left to a qualified repairer"));
  }

  private static String small(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  private static boolean forces(String sentence) {
    String plain = small(sentence);
    return (FORCE.matcher(plain).find() || SOUND.matcher(plain).find())
        && !DENIED.matcher(plain).find();
  }
}
