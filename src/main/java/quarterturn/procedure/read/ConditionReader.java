package quarterturn.procedure.read;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Slip;
import quarterturn.procedure.read.Node.Scalar;

/** Reads a condition where it stands in a file, and notes the steps it names. */
record ConditionReader(Faults faults, References references) {
  private static final int LONGEST = 400;

  /** The condition, or null with a fault at the word that does not fit. */
  @Nullable Condition read(@Nullable Node node) {
    Scalar when = new Scalars(faults).scalar(node);
    if (when == null) {
      return null;
    }
    if (when.text().length() > LONGEST) {
      faults.add(
          Slip.BAD_CONDITION,
          when.mark(),
          "a condition of more than " + LONGEST + " letters",
          "Split it over several branches");
      return null;
    }
    try {
      ConditionParser.Parsed parsed = ConditionParser.parse(when.text());
      references.condition(when, parsed.named());
      return parsed.condition();
    } catch (MisreadException e) {
      Mark mark = TextPosition.within(faults.source(), when, e.at());
      faults.add(Slip.BAD_CONDITION, mark, e.wrong(), e.mend());
      return null;
    }
  }
}
