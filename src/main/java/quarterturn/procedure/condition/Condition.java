package quarterturn.procedure.condition;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.clause.ConditionParser;
import quarterturn.unit.Turn;

/**
 * A condition of a branch, as {@link ConditionParser} reads it from words. Types and units are
 * settled when the file is read. It has one meaning: whether it holds of cells, which are single
 * values in a session and sets of values in a proof.
 */
public sealed interface Condition {
  /**
   * Whether this condition holds.
   *
   * @param at the cell in which a subject stands
   */
  boolean holds(Function<Subject, Cell> at);

  /** The conditions this one is made of; none for an atom. */
  List<Condition> parts();

  /** The atoms of this condition, in order. */
  default Stream<Atom> atoms() {
    return parts().stream().flatMap(Condition::atoms);
  }

  /** All subjects this condition speaks about. */
  default Set<Subject> subjects() {
    return atoms().map(Atom::about).collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * The largest pieces of this condition that each speak about one subject. States that differ in
   * none of them need not be told apart.
   */
  default Map<Condition, Subject> pieces() {
    Map<Condition, Subject> pieces = new LinkedHashMap<>();
    Set<Subject> subjects = subjects();
    if (subjects.size() == 1) {
      pieces.put(this, subjects.iterator().next());
    } else {
      parts().forEach(part -> pieces.putAll(part.pieces()));
    }
    return pieces;
  }

  /** What the case of this condition's form makes of it: all, any, not or a single statement. */
  <R> R match(
      Function<All, R> all, Function<Any, R> any, Function<Not, R> not, Function<Atom, R> atom);

  /** A condition that holds where every part does. */
  record All(List<Condition> parts) implements Condition {
    public All {
      parts = List.copyOf(parts);
    }

    @Override
    public boolean holds(Function<Subject, Cell> at) {
      return parts.stream().allMatch(part -> part.holds(at));
    }

    @Override
    public <R> R match(
        Function<All, R> all, Function<Any, R> any, Function<Not, R> not, Function<Atom, R> atom) {
      return all.apply(this);
    }
  }

  /** A condition that holds where at least one part does: "relief touches or below target". */
  record Any(List<Condition> parts) implements Condition {
    public Any {
      parts = List.copyOf(parts);
    }

    @Override
    public boolean holds(Function<Subject, Cell> at) {
      return parts.stream().anyMatch(part -> part.holds(at));
    }

    @Override
    public <R> R match(
        Function<All, R> all, Function<Any, R> any, Function<Not, R> not, Function<Atom, R> atom) {
      return any.apply(this);
    }
  }

  /**
   * A condition that holds where its part does not: "not called by setup", "relief differs by at
   * most 0.10 mm".
   */
  record Not(Condition part) implements Condition {
    @Override
    public List<Condition> parts() {
      return List.of(part);
    }

    @Override
    public boolean holds(Function<Subject, Cell> at) {
      return !part.holds(at);
    }

    @Override
    public <R> R match(
        Function<All, R> all, Function<Any, R> any, Function<Not, R> not, Function<Atom, R> atom) {
      return not.apply(this);
    }
  }

  /** A single statement about one subject. */
  sealed interface Atom extends Condition {
    default Subject about() {
      return match(Atoms.ABOUT);
    }

    /** The number at which this atom changes from holding to not; none where it has no number. */
    default List<Double> bounds() {
      return match(Atoms.BOUND);
    }

    /**
     * What to do with an atom of each kind. A kind without its case does not compile.
     *
     * @param <R> what comes of it
     */
    record Cases<R>(
        Function<Against, R> against,
        Function<Leans, R> leans,
        Function<Near, R> near,
        Function<Below, R> below,
        Function<AtLeast, R> atLeast,
        Function<Differs, R> differs,
        Function<Repeats, R> repeats,
        Function<Creeps, R> creeps,
        Function<Chosen, R> chosen,
        Function<Is, R> is,
        Function<Turned, R> turned,
        Function<Answered, R> answered,
        Function<Strings, R> strings,
        Function<Called, R> called,
        Function<Seems, R> seems,
        Function<Reached, R> reached,
        Function<Felt, R> felt) {}

    /** What the case of this atom's kind makes of it. */
    <R> R match(Cases<R> cases);

    @Override
    default boolean holds(Function<Subject, Cell> at) {
      return match(Atoms.HOLDS).test(at.apply(about()));
    }

    @Override
    default List<Condition> parts() {
      return List.of();
    }

    @Override
    default Stream<Atom> atoms() {
      return Stream.of(this);
    }

    @Override
    default <R> R match(
        Function<All, R> all, Function<Any, R> any, Function<Not, R> not, Function<Atom, R> atom) {
      return atom.apply(this);
    }
  }

  /** How the last reading of a quantity stands to its window: "relief below target". */
  record Against(Quantity quantity, Verdict verdict) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.against().apply(this);
    }
  }

  /** Where the middle of an undecided bracket lies: "relief leans into target". */
  record Leans(Quantity quantity, Verdict towards) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.leans().apply(this);
    }
  }

  /**
   * The last reading straddles one end of its window, or lies outside it by less than its own step:
   * "relief just above target".
   */
  record Near(Quantity quantity, Verdict side) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.near().apply(this);
    }
  }

  /** The last reading is below a limit: "humidity below 40 %". */
  record Below(Quantity quantity, double limit) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.below().apply(this);
    }
  }

  /** The last reading is at least a limit: "humidity at least 60 %". */
  record AtLeast(Quantity quantity, double limit) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.atLeast().apply(this);
    }
  }

  /**
   * The readings of the lowest and the highest string lie apart, as whole brackets: "relief differs
   * by more than 0.10 mm", "relief lowest above highest by more than 0.15 mm".
   */
  record Differs(Quantity quantity, More more, double limit) implements Atom {
    /** Which of the two strings has to read more. */
    public enum More {
      EITHER("differs"),
      LOWEST("lowest above highest"),
      HIGHEST("highest above lowest");

      private final String words;

      More(String words) {
        this.words = words;
      }

      /** The words between the quantity and "by more than". */
      public String words() {
        return words;
      }
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.differs().apply(this);
    }
  }

  /** The last two readings on one string agree: "relief repeats within 0.05 mm". */
  record Repeats(Quantity quantity, double limit) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.repeats().apply(this);
    }
  }

  /**
   * A share of what the neck has moved of late would carry the last reading out of its window:
   * "relief may creep out of target".
   */
  record Creeps(Quantity quantity) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.creeps().apply(this);
    }
  }

  /** The answer chosen at a step, or the outcome of a call: "rod-place is sound-hole or pocket". */
  record Chosen(String step, Set<String> options) implements Atom {
    public Chosen {
      options = Set.copyOf(options);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.chosen().apply(this);
    }
  }

  /** The role of the person at the bench: "role is beginner". */
  record Is(Role role) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.is().apply(this);
    }
  }

  /**
   * How far the rod was turned: "turned today at least 1/2 turn", "turned in all at least 1 turn".
   */
  record Turned(Span span, Turn least) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.turned().apply(this);
    }
  }

  /**
   * The neck's response to the last turns: "neck moved the wrong way", "neck gave no answer at
   * least 2 times".
   */
  record Answered(Response response, int times) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.answered().apply(this);
    }
  }

  /**
   * How the last readings of all strings stand: "every action in target", "some intonation above
   * target".
   */
  record Strings(boolean every, Quantity quantity, Verdict verdict) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.strings().apply(this);
    }
  }

  /** A larger job that this procedure runs within: "called by setup". */
  record Called(String procedure) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.called().apply(this);
    }
  }

  /** What all readings and turns together tell of the rod: "rod seems dead". */
  record Seems(Doubt doubt) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.seems().apply(this);
    }
  }

  /** How often a step was reached: "undecided-again reached at least 2 times". */
  record Reached(String step, int times) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.reached().apply(this);
    }
  }

  /** How the rod felt at the last turn: "rod felt stiff". */
  record Felt(Feel feel) implements Atom {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.felt().apply(this);
    }
  }

  /** The span over which turns are counted. */
  enum Span {
    /** Every turn either way in the last day, added up. */
    TODAY("today"),
    /** The distance from where the rod was found, either way. */
    IN_ALL("in all"),
    /** What the last lesson or session turned that is not set back yet, added up. */
    LAST_TIME("last time");

    private final String words;

    Span(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
