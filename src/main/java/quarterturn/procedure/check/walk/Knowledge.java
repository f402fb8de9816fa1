package quarterturn.procedure.check.walk;

import java.util.function.Predicate;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Response;
import quarterturn.procedure.condition.Subject;

/**
 * What a walk knows of a subject.
 *
 * @param initial how it may stand before anything was read, chosen, reached or turned
 * @param lasting whether what is known is known for longer than one step: not so of what changes by
 *     itself with time and readings, which would multiply the abstract states
 * @param stays whether it can still be known when the procedure begins once more
 */
record Knowledge(Predicate<Cell> initial, boolean lasting, boolean stays) {
  private static final Predicate<Cell> ANY = cell -> true;

  private static final Subject.Cases<Knowledge> ALL =
      new Subject.Cases<>(
          reading -> new Knowledge(Cell.Standing.NOTHING::equals, true, false),
          differing -> new Knowledge(ANY, false, false),
          repeating -> new Knowledge(ANY, false, false),
          creeping -> new Knowledge(ANY, false, false),
          each -> new Knowledge(ANY, true, false),
          choice -> new Knowledge(new Cell.Option("")::equals, true, true),
          count -> new Knowledge(Knowledge::none, true, true),
          person -> new Knowledge(ANY, true, true),
          turning -> new Knowledge(ANY, turning.span() == Condition.Span.LAST_TIME, false),
          neck -> new Knowledge(new Cell.Answer(Response.NOT_TURNED, 1, 2)::equals, true, true),
          rod -> new Knowledge(new Cell.Rod(null)::equals, false, false),
          feeling -> new Knowledge(new Cell.Felt(null)::equals, true, false),
          callers -> new Knowledge(ANY, true, true));

  private static boolean none(Cell count) {
    return count instanceof Cell.Amount amount && amount.from() == 0;
  }

  static Knowledge of(Subject subject) {
    return subject.match(ALL);
  }
}
