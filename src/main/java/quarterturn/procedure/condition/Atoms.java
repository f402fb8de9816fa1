package quarterturn.procedure.condition;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** The meaning of each atom of a condition. */
final class Atoms {
  private Atoms() {}

  /** The subject that an atom speaks about. */
  static final Condition.Atom.Cases<Subject> ABOUT =
      new Condition.Atom.Cases<>(
          against -> new Subject.Reading(against.quantity()),
          leans -> new Subject.Reading(leans.quantity()),
          near -> new Subject.Reading(near.quantity()),
          below -> new Subject.Reading(below.quantity()),
          atLeast -> new Subject.Reading(atLeast.quantity()),
          differs -> new Subject.Differing(differs.quantity()),
          repeats -> new Subject.Repeating(repeats.quantity()),
          creeps -> new Subject.Creeping(creeps.quantity()),
          chosen -> new Subject.Choice(chosen.step()),
          is -> new Subject.Person(),
          turned -> new Subject.Turning(turned.span()),
          answered -> new Subject.Neck(),
          strings -> new Subject.Each(strings.quantity()),
          called -> new Subject.Callers(),
          seems -> new Subject.Rod(),
          reached -> new Subject.Count(reached.step()),
          felt -> new Subject.Feeling());

  /** Whether an atom holds in all of a cell of its subject. */
  static final Condition.Atom.Cases<Predicate<Cell>> HOLDS =
      new Condition.Atom.Cases<>(
          a -> cell -> cell instanceof Cell.Standing s && s.verdict() == a.verdict(),
          a -> cell -> cell instanceof Cell.Standing s && s.leans(a.towards()),
          a -> cell -> cell instanceof Cell.Standing s && s.near() == a.side(),
          a -> cell -> cell instanceof Cell.Standing s && s.isBelow(a.limit()),
          a -> cell -> cell instanceof Cell.Standing s && s.isAtLeast(a.limit()),
          a -> cell -> cell instanceof Cell.Apart d && d.isMore(a.more(), a.limit()),
          a -> cell -> cell instanceof Cell.Apart d && d.to() <= a.limit() + Cell.SLACK,
          a -> cell -> cell instanceof Cell.Creep c && c.out(),
          a -> cell -> cell instanceof Cell.Option o && a.options().contains(o.id()),
          a -> cell -> cell instanceof Cell.Person p && p.role() == a.role(),
          a -> cell -> cell instanceof Cell.Amount n && n.isAtLeast(a.least().turns()),
          a -> cell -> cell instanceof Cell.Answer n && n.is(a.response(), a.times()),
          a -> cell -> cell instanceof Cell.Strings all && strings(a, all.verdicts()),
          a -> cell -> cell instanceof Cell.Within w && w.callers().contains(a.procedure()),
          a -> cell -> cell instanceof Cell.Rod rod && rod.doubt() == a.doubt(),
          a -> cell -> cell instanceof Cell.Amount n && n.isAtLeast(a.times()),
          a -> cell -> cell instanceof Cell.Felt felt && felt.feel() == a.feel());

  private static boolean strings(Condition.Strings atom, Set<Verdict> verdicts) {
    return atom.every()
        ? verdicts.equals(Set.of(atom.verdict()))
        : verdicts.contains(atom.verdict());
  }

  private static List<Double> ends(Condition.Differs differs) {
    return switch (differs.more()) {
      case LOWEST -> List.of(differs.limit());
      case HIGHEST -> List.of(-differs.limit());
      case EITHER -> List.of(-differs.limit(), differs.limit());
    };
  }

  /** The number at which an atom changes from holding to not; none where it has no number. */
  static final Condition.Atom.Cases<List<Double>> BOUND =
      new Condition.Atom.Cases<>(
          against -> List.of(),
          leans -> List.of(),
          near -> List.of(),
          below -> List.of(below.limit()),
          atLeast -> List.of(atLeast.limit()),
          Atoms::ends,
          repeats -> List.of(repeats.limit()),
          creeps -> List.of(),
          chosen -> List.of(),
          is -> List.of(),
          turned -> List.of(turned.least().turns()),
          answered -> List.of((double) answered.times()),
          strings -> List.of(),
          called -> List.of(),
          seems -> List.of(),
          reached -> List.of((double) reached.times()),
          felt -> List.of());
}
