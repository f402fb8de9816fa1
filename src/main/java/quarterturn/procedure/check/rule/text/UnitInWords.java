package quarterturn.procedure.check.rule.text;

import java.util.Locale;
import java.util.regex.Pattern;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;

/** The rule that no text has a reading typed in another unit than the one it is taken in. */
public final class UnitInWords {
  public static final Rule RULE =
      Rule.ofSteps(
          "unit-in-words",
          "The words of a reading name no other unit, and don't say how a figure is written.",
          UnitInWords::prove);

  private static final Pattern LENGTH =
      Pattern.compile(
          "\\b(inch|inches|thou|thousandths?|hundredths?|mils?|64ths|centimet(re|er)s?|cm)\\b");

  /** How a figure is to be written, which the program says itself. */
  private static final Pattern WRITTEN =
      Pattern.compile(
          "\\b(type|write|written|enter)\\b[^;]*?(\\d|\\bfigures?\\b|\\bnumber\\b)|\\bas mm\\b");

  private static final Pattern HEAT = Pattern.compile("\\bfahrenheit\\b");

  private UnitInWords() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (step instanceof Step.Measure measure) {
      String unit = measure.quantity().unit();
      Pattern other = unit.equals("mm") ? LENGTH : unit.equals("C") ? HEAT : null;
      if (other != null
          && step.words()
              .all()
              .map(text -> text.toLowerCase(Locale.ROOT))
              .anyMatch(text -> other.matcher(text).find() || WRITTEN.matcher(text).find())) {
        found.add(
            step,
            step.id() + " is read in " + unit + ", and its words say how to write it",
            "leave the unit to the program: whoever reads in another types it behind the number");
      }
    }
  }
}
