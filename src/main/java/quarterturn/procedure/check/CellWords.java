package quarterturn.procedure.check;

import java.util.List;
import java.util.stream.Collectors;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Verdict;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** Says how things stand, with one value of each interval. */
final class CellWords {
  private CellWords() {}

  /** "relief undecided, leaning nowhere"; "humidity 40 %". */
  static String of(Subject subject, Cell cell) {
    if (subject instanceof Subject.Reading reading && cell instanceof Cell.Standing s) {
      return standing(reading.quantity(), s);
    } else if (cell instanceof Cell.Strings strings) {
      return strings(((Subject.Each) subject).quantity(), strings);
    } else if (subject instanceof Subject.Choice choice && cell instanceof Cell.Option option) {
      return option.id().isEmpty()
          ? choice.step() + " not answered yet"
          : choice.step() + " is " + option.id();
    } else if (subject instanceof Subject.Count count && cell instanceof Cell.Amount amount) {
      return count.step() + " reached " + Decimals.plain(amount.from()) + " times";
    } else if (subject instanceof Subject.Turning turning && cell instanceof Cell.Amount amount) {
      return "turned " + turning.span().words() + " " + new Turn(amount.from());
    } else if (subject instanceof Subject.Differing d && cell instanceof Cell.Apart apart) {
      return d.quantity().word() + " differing by " + apart(apart, d.quantity());
    } else if (subject instanceof Subject.Repeating r && cell instanceof Cell.Apart apart) {
      return r.quantity().word() + " repeating within " + apart(apart, r.quantity());
    } else if (cell instanceof Cell.Answer answer) {
      String times = answer.from() > 1 ? " " + Decimals.plain(answer.from()) + " times" : "";
      return "neck " + answer.response().words() + times;
    } else if (cell instanceof Cell.Person person) {
      return "role is " + person.role().word();
    } else if (cell instanceof Cell.Rod rod) {
      return rod.doubt() == null ? "rod seems sound" : "rod seems " + rod.doubt().words();
    } else if (cell instanceof Cell.Felt felt) {
      return felt.feel() == null ? "rod not turned yet" : "rod felt " + felt.feel().word();
    } else if (cell instanceof Cell.Within within) {
      return within.callers().isEmpty()
          ? "not called by another procedure"
          : "called by " + String.join(" and ", within.callers());
    }
    return cell.toString();
  }

  private static String standing(Quantity quantity, Cell.Standing s) {
    if (s.verdict() == Verdict.NOT_MEASURED) {
      return quantity.word() + " " + s.verdict().words();
    }
    boolean bounded = s.from() > -Cell.WITHOUT_END || s.below() < Cell.WITHOUT_END;
    String value = bounded ? " " + value(s.from(), s.below(), quantity) : "";
    if (quantity != Quantity.RELIEF) {
      return quantity.word() + (bounded ? value : " was read");
    }
    String lean =
        s.lean() == null
            ? ""
            : s.lean() == Verdict.UNDECIDED
                ? ", leaning nowhere"
                : ", leaning " + (s.lean() == Verdict.IN ? "into target" : s.lean().words());
    return quantity.word() + value + " " + s.verdict().words() + lean;
  }

  private static String value(double from, double below, Quantity quantity) {
    boolean low = from == -Cell.WITHOUT_END;
    return (low ? "below " + Decimals.plain(below) : Decimals.plain(from)) + " " + quantity.unit();
  }

  private static String apart(Cell.Apart apart, Quantity quantity) {
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
