package quarterturn.procedure.check.walk;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Doubt;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** Describes a cell in words, with one value of each interval. */
public final class CellWords {
  private CellWords() {}

  /** A subject's cell in words: "relief undecided, leaning nowhere"; "humidity 40 %". */
  public static String of(Subject subject, Cell cell) {
    return subject.match(
        new Subject.Cases<>(
            reading -> standing(reading.quantity(), (Cell.Standing) cell),
            d -> d.quantity().word() + " differing by " + apart((Cell.Apart) cell, d.quantity()),
            r ->
                r.quantity().word() + " repeating within " + apart((Cell.Apart) cell, r.quantity()),
            c ->
                c.quantity().word()
                    + (((Cell.Creep) cell).out() ? " may" : " will not")
                    + " creep out",
            each -> strings(each.quantity(), (Cell.Strings) cell),
            choice -> option(choice.step(), ((Cell.Option) cell).id()),
            count -> count.step() + " reached " + number(cell) + " times",
            person -> "role is " + ((Cell.Person) cell).role().word(),
            turning ->
                "turned " + turning.span().words() + " " + new Turn(((Cell.Amount) cell).from()),
            neck -> answer((Cell.Answer) cell),
            rod -> rod(((Cell.Rod) cell).doubt()),
            feeling -> feel(((Cell.Felt) cell).feel()),
            callers -> callers(((Cell.Within) cell).callers())));
  }

  private static String number(Cell amount) {
    return Decimals.plain(((Cell.Amount) amount).from());
  }

  private static String option(String step, String option) {
    return option.isEmpty() ? step + " not answered yet" : step + " is " + option;
  }

  private static String answer(Cell.Answer answer) {
    String times = answer.from() > 1 ? " " + Decimals.plain(answer.from()) + " times" : "";
    return "neck " + answer.response().words() + times;
  }

  private static String rod(@Nullable Doubt doubt) {
    return doubt == null ? "rod seems sound" : "rod seems " + doubt.words();
  }

  private static String feel(@Nullable Feel feel) {
    return feel == null ? "rod not turned yet" : "rod felt " + feel.word();
  }

  private static String callers(Set<String> callers) {
    return callers.isEmpty()
        ? "not called by another procedure"
        : "called by " + String.join(" and ", callers);
  }

  private static String standing(Quantity quantity, Cell.Standing s) {
    if (s.verdict() == Verdict.NOT_MEASURED) {
      return quantity.word() + " " + s.verdict().words();
    }
    boolean bounded = s.from() > -Cell.WITHOUT_END || s.below() < Cell.WITHOUT_END;
    String value = bounded ? " " + value(s.from(), s.below(), quantity) : "";
    if (!quantity.ofBow()) {
      return quantity.word() + (bounded ? value : " was read");
    }
    String lean =
        s.lean() == null
            ? ""
            : s.lean() == Verdict.UNDECIDED
                ? ", leaning nowhere"
                : ", leaning " + (s.lean() == Verdict.IN ? into(s) : s.lean().words());
    String just = s.lean() == null && s.near() != null ? " just" : "";
    return quantity.word() + value + just + " " + s.verdict().words() + lean;
  }

  private static String into(Cell.Standing s) {
    return "into target from " + (s.near() == Verdict.BELOW ? "below" : "above");
  }

  private static String value(double from, double below, Quantity quantity) {
    boolean low = from == -Cell.WITHOUT_END;
    return (low ? "below " + Decimals.plain(below) : Decimals.plain(from)) + " " + quantity.unit();
  }

  private static String apart(Cell.Apart apart, Quantity quantity) {
    if (apart.to() <= 0) {
      return apart(new Cell.Apart(-apart.to(), -apart.above()), quantity) + ", the highest more";
    }
    return (apart.to() < Cell.WITHOUT_END
            ? Decimals.plain(apart.to())
            : "more than " + Decimals.plain(apart.above()))
        + " "
        + quantity.unit();
  }

  private static String strings(Quantity quantity, Cell.Strings strings) {
    List<Verdict> verdicts = strings.verdicts().stream().sorted().toList();
    String which = verdicts.size() == 1 ? "every " : "some ";
    return verdicts.stream()
        .map(verdict -> which + quantity.word() + " " + verdict.words())
        .collect(Collectors.joining(", "));
  }
}
