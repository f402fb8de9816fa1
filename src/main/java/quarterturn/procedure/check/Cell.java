package quarterturn.procedure.check;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Doubt;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Response;
import quarterturn.procedure.Role;
import quarterturn.procedure.Verdict;

/**
 * One way things can stand with a {@link Subject}, as far as the conditions of a procedure tell
 * them apart. Numbers are intervals, so that a cell stands for all values in it.
 */
sealed interface Cell {
  /** The end of every interval that has none. */
  double WITHOUT_END = Double.POSITIVE_INFINITY;

  /** Conditions compare with a little slack; so do intervals. */
  double SLACK = 1e-9;

  /**
   * How a reading stands.
   *
   * @param lean where an undecided one leans, or null
   * @param from the least value
   * @param below all values are below this
   */
  record Standing(Verdict verdict, @Nullable Verdict lean, double from, double below)
      implements Cell {}

  /** A number above {@code above}, up to and with {@code to}. */
  record Apart(double above, double to) implements Cell {}

  /** The verdicts that there are among the strings. */
  record Strings(Set<Verdict> verdicts) implements Cell {}

  /** An option, or an outcome; empty where none was chosen yet. */
  record Option(String id) implements Cell {}

  /** A number from {@code from}, below {@code below}. */
  record Amount(double from, double below) implements Cell {}

  /** What the neck did, and how often so. */
  record Answer(Response response, double from, double below) implements Cell {}

  record Person(Role role) implements Cell {}

  record Rod(@Nullable Doubt doubt) implements Cell {}

  record Felt(@Nullable Feel feel) implements Cell {}

  record Within(Set<String> callers) implements Cell {}

  /** Whether {@code piece}, which speaks of this cell's subject alone, holds in all of it. */
  static boolean holds(Condition piece, Cell cell) {
    if (piece instanceof Condition.All all) {
      return all.parts().stream().allMatch(part -> holds(part, cell));
    } else if (piece instanceof Condition.Any any) {
      return any.parts().stream().anyMatch(part -> holds(part, cell));
    } else if (piece instanceof Condition.Not not) {
      return !holds(not.part(), cell);
    }
    return atom(piece, cell);
  }

  private static boolean atom(Condition atom, Cell cell) {
    if (cell instanceof Standing s) {
      return standing(atom, s);
    } else if (cell instanceof Apart apart) {
      return atom instanceof Condition.Differs differs
          ? apart.above() >= differs.limit() - SLACK
          : atom instanceof Condition.Repeats repeats && apart.to() <= repeats.limit() + SLACK;
    } else if (cell instanceof Strings strings) {
      return atom instanceof Condition.Strings all && strings(all, strings.verdicts());
    } else if (cell instanceof Option option) {
      return atom instanceof Condition.Chosen chosen && chosen.options().contains(option.id());
    } else if (cell instanceof Amount amount) {
      return atom instanceof Condition.Reached reached
          ? amount.from() >= reached.times()
          : atom instanceof Condition.Turned turned
              && amount.from() >= turned.least().turns() - SLACK;
    } else if (cell instanceof Answer answer) {
      return atom instanceof Condition.Answered answered
          && answer.response() == answered.response()
          && answer.from() >= answered.times();
    } else if (cell instanceof Person person) {
      return atom instanceof Condition.Is is && is.role() == person.role();
    } else if (cell instanceof Rod rod) {
      return atom instanceof Condition.Seems seems && seems.doubt() == rod.doubt();
    } else if (cell instanceof Felt felt) {
      return atom instanceof Condition.Felt wanted && wanted.feel() == felt.feel();
    }
    return cell instanceof Within within
        && atom instanceof Condition.Called called
        && within.callers().contains(called.procedure());
  }

  private static boolean standing(Condition atom, Standing s) {
    boolean read = s.verdict() != Verdict.NOT_MEASURED;
    if (atom instanceof Condition.Against against) {
      return against.verdict() == s.verdict();
    } else if (atom instanceof Condition.Leans leans) {
      return s.verdict() == Verdict.UNDECIDED && leans.towards() == s.lean();
    } else if (atom instanceof Condition.Below below) {
      return read && s.below() <= below.limit() + SLACK;
    }
    return atom instanceof Condition.AtLeast least && read && s.from() >= least.limit() - SLACK;
  }

  private static boolean strings(Condition.Strings condition, Set<Verdict> verdicts) {
    return condition.every()
        ? verdicts.equals(Set.of(condition.verdict()))
        : verdicts.contains(condition.verdict());
  }
}
