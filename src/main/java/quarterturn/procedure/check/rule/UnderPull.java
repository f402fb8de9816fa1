package quarterturn.procedure.check.rule;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.check.words.Act;

/** The rule that strings are slack before the neck is loosened in its pocket or one is cut. */
public final class UnderPull {
  public static final Rule RULE =
      Rule.ofSteps(
          "under-pull",
          "Before a neck is loosened or a string cut, it hangs slack, and no words raise a saddle at full pull.",
          UnderPull::prove);

  /** Words of a string that has no pull left. */
  private static final Pattern SLACK =
      Pattern.compile("\\b(loose|limp|fully|slack off|no pull|completely|slacken it)\\b");

  private static final Pattern SADDLE =
      Pattern.compile("(?is)\\bsaddles?\\b.*\\b(up|raise\\w*)\\b");

  /** Words that leave a string its pull while a saddle is raised. */
  private static final Pattern LOADED =
      Pattern.compile(
          "(?i)\\b(keep|leave|stays?|hold)\\b[^.]*\\b(string|strings)\\b[^.]*\\b(up|pitch|tight|tension|pull)\\b"
              + "|\\bwithout (slackening|letting)\\b|\\b(no need|need not|needn't|don't|do not)\\b[^.]*\\bslacken");

  private UnderPull() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (loosens(step)) {
      for (Fact need : proof.limits().apartNeeds()) {
        proof
            .nearest(step, at -> !at.has(need))
            .ifPresent(
                node ->
                    found.add(
                        node,
                        step.id() + " can loosen the neck before " + need.meaning(),
                        "let a step that establishes " + need.word() + " come first on this way"));
      }
    }
    boolean eased =
        proof.said(step).stream()
            .map(said -> said.order().act())
            .anyMatch(act -> act == Act.EASE_STRING || act == Act.SLACKEN);
    (eased ? Stream.<String>empty() : step.words().all())
        .filter(SADDLE.asPredicate().and(LOADED.asPredicate()))
        .forEach(
            text ->
                found.add(
                    step,
                    step.id() + " has a saddle raised under the pull of its string",
                    "let its string be slackened first"));
    boolean slackened = proof.nearest(step, at -> !at.has(Fact.DETUNED)).isEmpty();
    boolean cuts = proof.said(step).stream().anyMatch(s -> s.order().act() == Act.CUT_STRING);
    if ((loosens(step) && slackened || cuts)
        && !slack(step)
        && reached(proof).contains(step.id())) {
      found.add(
          step,
          step.id() + " comes where no step has said that the strings hang loose",
          "let a step come first that slackens them until they hang loose");
    }
  }

  private static boolean loosens(Step step) {
    return step.establishes().contains(Fact.NECK_LOOSE)
        || (step instanceof Step.Choose choose
            && choose.options().stream()
                .anyMatch(one -> one.establishes().contains(Fact.NECK_LOOSE)));
  }

  /** The steps that a way leads to on which no string was slackened until it hangs loose. */
  private static Set<String> reached(Proof proof) {
    return Ways.reach(proof.procedure(), proof.procedure().begin(), step -> !slack(step));
  }

  private static boolean slack(Step step) {
    return step instanceof Step.Tell
        && !step.establishes().contains(Fact.NECK_LOOSE)
        && SLACK.matcher(step.words().text().toLowerCase(Locale.ROOT)).find();
  }
}
