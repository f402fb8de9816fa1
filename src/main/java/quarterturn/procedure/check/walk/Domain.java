package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Doubt;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Response;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;

/**
 * All cells of one subject, told apart no further than the conditions do: cells in which the same
 * conditions hold are one. Masks have a bit for each.
 */
public final class Domain {
  /** Most cells of a domain: as many as fit the bits of a mask. */
  public static final int MOST = 31;

  private final Subject subject;
  private final List<Condition> pieces;
  private final List<Cell> finest;
  private final List<Cell> cells = new ArrayList<>();
  private final int[] belongs;

  private Domain(Subject subject, List<Condition> pieces, List<Cell> finest) {
    this.subject = subject;
    this.pieces = pieces;
    this.finest = finest;
    this.belongs = new int[finest.size()];
    List<List<Boolean>> seen = new ArrayList<>();
    for (int i = 0; i < finest.size(); i++) {
      Cell cell = finest.get(i);
      List<Boolean> holding = pieces.stream().map(piece -> piece.holds(about -> cell)).toList();
      int at = seen.indexOf(holding);
      if (at < 0) {
        at = seen.size();
        seen.add(holding);
        cells.add(cell);
      }
      belongs[i] = at;
    }
  }

  /**
   * The domain of a subject; null where its cells are too many to walk.
   *
   * @param pieces what conditions say of it alone
   * @param options of a choice, or outcomes of a call; empty for other subjects
   */
  static @Nullable Domain of(
      Subject subject, Collection<Condition> pieces, Collection<String> options) {
    Set<Condition.Atom> atoms = new LinkedHashSet<>();
    pieces.forEach(piece -> piece.atoms().forEach(atoms::add));
    Domain domain = new Domain(subject, List.copyOf(pieces), finest(subject, atoms, options));
    return domain.cells.size() > MOST ? null : domain;
  }

  public Subject subject() {
    return subject;
  }

  /** A representative of each cell. */
  public List<Cell> cells() {
    return cells;
  }

  /** The conditions, or pieces of them, that speak of the subject alone. */
  List<Condition> pieces() {
    return pieces;
  }

  /** The mask of all cells. */
  public int all() {
    return (1 << cells.size()) - 1;
  }

  /** The mask of the cells in which a piece holds. */
  public int where(Condition piece) {
    int mask = 0;
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = cells.get(i);
      mask |= piece.holds(about -> cell) ? 1 << i : 0;
    }
    return mask;
  }

  /** The mask of the cells of which {@code so} holds, at least in part. */
  public int where(Predicate<Cell> so) {
    int mask = 0;
    for (int i = 0; i < belongs.length; i++) {
      mask |= so.test(finest.get(i)) ? 1 << belongs[i] : 0;
    }
    return mask;
  }

  /**
   * The mask after a count went up by one: a wide cell, and the last, may keep the count; all but
   * the last may pass it on.
   */
  int onward(int mask) {
    int next = 0;
    for (int i = 0; i < belongs.length; i++) {
      if ((mask >> belongs[i] & 1) == 1 && finest.get(i) instanceof Cell.Amount amount) {
        boolean last = i + 1 == belongs.length;
        next |= last || amount.below() - amount.from() > 1 ? 1 << belongs[i] : 0;
        next |= last ? 0 : 1 << belongs[i + 1];
      }
    }
    return next;
  }

  /** The masks of the cells that are alike as far as some pieces go, by cell. */
  int[] alike(Collection<Condition> pieces) {
    int[] alike = new int[cells.size()];
    List<List<Boolean>> holding =
        cells.stream()
            .map(cell -> pieces.stream().map(piece -> piece.holds(about -> cell)).toList())
            .toList();
    for (int i = 0; i < alike.length; i++) {
      for (int j = 0; j < alike.length; j++) {
        alike[i] |= holding.get(i).equals(holding.get(j)) ? 1 << j : 0;
      }
    }
    return alike;
  }

  private static List<Cell> finest(
      Subject subject, Collection<Condition.Atom> atoms, Collection<String> options) {
    return subject.match(
        new Subject.Cases<>(
            reading -> standings(reading.quantity(), atoms),
            differing -> between(-Cell.WITHOUT_END, atoms, Cell.Apart::new),
            repeating -> between(0, atoms, Cell.Apart::new),
            creeping -> List.of(new Cell.Creep(false), new Cell.Creep(true)),
            each -> strings(each.quantity()),
            choice -> options(options),
            count -> between(0, atoms, Cell.Amount::new),
            person -> Arrays.stream(Role.values()).<Cell>map(Cell.Person::new).toList(),
            turning -> between(0, atoms, Cell.Amount::new),
            neck -> answers(atoms),
            rod -> withNone(Doubt.values(), Cell.Rod::new),
            feeling -> withNone(Feel.values(), Cell.Felt::new),
            callers -> callers(atoms)));
  }

  /** A cell for none, then one for each value. */
  private static <T> List<Cell> withNone(T[] values, Function<@Nullable T, Cell> cell) {
    List<Cell> cells = new ArrayList<>();
    cells.add(cell.apply(null));
    Arrays.stream(values).map(cell).forEach(cells::add);
    return cells;
  }

  private static List<Cell> options(Collection<String> options) {
    List<Cell> cells = new ArrayList<>();
    options.forEach(option -> cells.add(new Cell.Option(option)));
    cells.add(new Cell.Option(""));
    return cells;
  }

  /** Intervals from {@code least} on between the bounds that conditions name. */
  private static List<Cell> between(
      double least, Collection<Condition.Atom> atoms, BiFunction<Double, Double, Cell> interval) {
    TreeSet<Double> bounds = new TreeSet<>(List.of(least));
    atoms.forEach(atom -> bounds.addAll(atom.bounds()));
    bounds.add(Cell.WITHOUT_END);
    List<Cell> cells = new ArrayList<>();
    List<Double> ends = List.copyOf(bounds);
    for (int i = 1; i < ends.size(); i++) {
      cells.add(interval.apply(ends.get(i - 1), ends.get(i)));
    }
    return cells;
  }

  private static List<Cell> standings(Quantity quantity, Collection<Condition.Atom> atoms) {
    TreeSet<Double> bounds = new TreeSet<>(List.of(-Cell.WITHOUT_END, Cell.WITHOUT_END));
    atoms.forEach(atom -> bounds.addAll(atom.bounds()));
    List<Double> ends = List.copyOf(bounds);
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.Standing.NOTHING);
    for (int i = 1; i < ends.size(); i++) {
      for (Verdict verdict : Verdict.values()) {
        standing(cells, quantity, verdict, ends.get(i - 1), ends.get(i));
      }
    }
    return cells;
  }

  private static void standing(
      List<Cell> cells, Quantity quantity, Verdict verdict, double from, double below) {
    BiConsumer<@Nullable Verdict, @Nullable Verdict> add =
        (lean, near) -> cells.add(new Cell.Standing(verdict, lean, near, from, below));
    // Only a bow is held to its window by one reading; the others are, string by string.
    boolean bow = quantity.ofBow();
    if (verdict == Verdict.NOT_MEASURED || (!bow && verdict != Verdict.UNDECIDED)) {
      return;
    }
    if (bow && verdict == Verdict.UNDECIDED) {
      add.accept(Verdict.BELOW, Verdict.BELOW);
      add.accept(Verdict.IN, Verdict.BELOW);
      add.accept(Verdict.IN, Verdict.ABOVE);
      add.accept(Verdict.ABOVE, Verdict.ABOVE);
      add.accept(Verdict.UNDECIDED, null);
      return;
    }
    add.accept(null, null);
    if (verdict == Verdict.BELOW || verdict == Verdict.ABOVE) {
      add.accept(null, verdict);
    }
  }

  private static List<Cell> strings(Quantity quantity) {
    List<Verdict> possible =
        quantity.bracket()
            ? List.of(Verdict.values())
            : List.of(Verdict.NOT_MEASURED, Verdict.BELOW, Verdict.IN, Verdict.ABOVE);
    List<Cell> cells = new ArrayList<>();
    for (int bits = 1; bits < 1 << possible.size(); bits++) {
      EnumSet<Verdict> verdicts = EnumSet.noneOf(Verdict.class);
      for (int i = 0; i < possible.size(); i++) {
        if ((bits >> i & 1) == 1) {
          verdicts.add(possible.get(i));
        }
      }
      cells.add(new Cell.Strings(Set.copyOf(verdicts)));
    }
    return cells;
  }

  /** The cells of the callers: called by nobody, by each job that is named, and by all of them. */
  private static List<Cell> callers(Collection<Condition.Atom> atoms) {
    Set<String> named = new LinkedHashSet<>();
    for (Condition.Atom atom : atoms) {
      if (atom instanceof Condition.Called called) {
        named.add(called.procedure());
      }
    }
    List<Cell> cells = new ArrayList<>(List.of(new Cell.Within(Set.of())));
    named.forEach(one -> cells.add(new Cell.Within(Set.of(one))));
    cells.add(new Cell.Within(named));
    return cells;
  }

  private static List<Cell> answers(Collection<Condition.Atom> atoms) {
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell.Answer(Response.NOT_TURNED, 1, 2));
    for (Response response : Response.values()) {
      if (response == Response.NOT_TURNED) {
        continue;
      }
      TreeSet<Double> bounds = new TreeSet<>(List.of(1.0, Cell.WITHOUT_END));
      atoms.stream()
          .filter(a -> a instanceof Condition.Answered one && one.response() == response)
          .forEach(atom -> bounds.addAll(atom.bounds()));
      List<Double> ends = List.copyOf(bounds);
      for (int i = 1; i < ends.size(); i++) {
        cells.add(new Cell.Answer(response, ends.get(i - 1), ends.get(i)));
      }
    }
    return cells;
  }
}
