package quarterturn.script;

import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.Length;

/** A reading given as JSON: bounds by key, one number, or a text as it would be typed. */
final class ReadingFields {
  private ReadingFields() {}

  static Answer read(ReplyFields fields, Prompt.Measure prompt) {
    if (fields.has("answer")) {
      return spoken(fields, prompt);
    }
    if (!prompt.quantity().bracket()) {
      fields.only("answer");
      throw new BadAnswerException("an answer is missing");
    }
    fields.only("passes_mm", "lifts_mm", "passes_in", "lifts_in");
    boolean passes = fields.has("passes_mm") || fields.has("passes_in");
    boolean lifts = fields.has("lifts_mm") || fields.has("lifts_in");
    if (passes && lifts) {
      double low = bound(fields, "passes");
      double high = bound(fields, "lifts");
      if (low >= high) {
        throw new BadAnswerException(
            "the gauge that passes must be thinner than the one that pushes the string up");
      }
      return new Answer.Measured(new Bracket(low, high));
    }
    if (passes) {
      return new Answer.Measured(Bracket.passes(bound(fields, "passes")));
    }
    if (lifts) {
      return new Answer.Measured(Bracket.lifts(bound(fields, "lifts")));
    }
    throw new BadAnswerException("a reading is missing");
  }

  private static Answer spoken(ReplyFields fields, Prompt.Measure prompt) {
    if (fields.only("answer").word("answer").equals("cannot")) {
      return new Answer.CannotMeasure();
    }
    if (prompt.quantity().bracket()) {
      return new Answer.Measured(BracketParser.parse(fields.text("answer"), prompt.step()));
    }
    if (fields.isNumber("answer")) {
      return new Answer.Value(fields.number("answer"));
    }
    return new Answer.Value(prompt.quantity().value(fields.text("answer")));
  }

  /** A bound in millimetres, from its key in millimetres or in inches. */
  private static double bound(ReplyFields fields, String which) {
    String mm = which + "_mm";
    String in = which + "_in";
    if (fields.has(mm) && fields.has(in)) {
      throw new BadAnswerException("give " + mm + " or " + in + ", not both");
    }
    double bound = fields.has(mm) ? fields.number(mm) : fields.number(in) * Length.MM_PER_INCH;
    if (!(bound >= 0) || Double.isInfinite(bound)) {
      throw new BadAnswerException("a gap cannot be negative; if the string rests, answer touches");
    }
    return bound;
  }
}
