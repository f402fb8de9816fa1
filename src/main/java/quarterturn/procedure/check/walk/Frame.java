package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;

/** One procedure with everything its conditions speak about, in a fixed order. */
public final class Frame {
  private final Library library;
  private final Procedure procedure;
  private final List<Domain> domains = new ArrayList<>();
  private final Map<Subject, Integer> index = new HashMap<>();
  private final List<Subject> tooMany = new ArrayList<>();
  private final boolean[] fleeting;

  /** The mask of the rod's cells in which it seems sound. */
  private final int sound;

  private final Layout layout;

  /** The bits of the subjects that stay known for longer than one step. */
  private final long[] lasting;

  private final long[] passing;

  Frame(Library library, Procedure procedure) {
    this.library = library;
    this.procedure = procedure;
    Map<Subject, Set<Condition>> pieces = new LinkedHashMap<>();
    for (Step step : procedure.steps().values()) {
      for (Condition condition : stated(step)) {
        condition
            .pieces()
            .forEach(
                (piece, subject) ->
                    pieces.computeIfAbsent(subject, s -> new LinkedHashSet<>()).add(piece));
      }
    }
    pieces.forEach(this::add);
    this.fleeting = new boolean[domains.size()];
    for (int i = 0; i < fleeting.length; i++) {
      fleeting[i] = fleeting(domains.get(i));
    }
    this.sound = where(ROD, new Cell.Rod(null)::equals);
    this.layout = new Layout(domains);
    this.lasting = layout.all(i -> !fleeting[i]);
    this.passing = layout.all(i -> fleeting[i]);
  }

  private static final Subject ROD = new Subject.Rod();

  /** The conditions a step states, and for a turn those it rests on. */
  static List<Condition> stated(Step step) {
    List<Condition> all = new ArrayList<>(conditions(step));
    if (step instanceof Step.TurnRod) {
      all.addAll(List.of(TIGHTEN, LOOSEN, STAY, unread(Quantity.RELIEF)));
    }
    if (step instanceof Step.Measure measure) {
      all.add(unread(measure.quantity()));
    }
    return all;
  }

  /** The readings after which the rod is tightened. */
  public static final Condition TIGHTEN = turning(Verdict.ABOVE, Verdict.ABOVE);

  /** The readings after which the rod is loosened. */
  public static final Condition LOOSEN = turning(Verdict.BELOW, Verdict.BELOW, Verdict.TOUCHES);

  /** The readings after which the rod is not turned. */
  static final Condition STAY = new Condition.Against(Quantity.RELIEF, Verdict.IN);

  /** The condition that a quantity could not be measured. */
  static Condition unread(Quantity quantity) {
    return new Condition.Against(quantity, Verdict.NOT_MEASURED);
  }

  /** A reading that is outside on a side, or straddles that end of the window. */
  private static Condition turning(Verdict side, Verdict... verdicts) {
    List<Condition> parts = new ArrayList<>(List.of(new Condition.Near(Quantity.RELIEF, side)));
    for (Verdict verdict : verdicts) {
      parts.add(new Condition.Against(Quantity.RELIEF, verdict));
    }
    return new Condition.Any(parts);
  }

  private void add(Subject subject, Set<Condition> pieces) {
    Domain domain = Domain.of(subject, pieces, options(subject));
    if (domain == null) {
      tooMany.add(subject);
    } else {
      index.put(subject, domains.size());
      domains.add(domain);
    }
  }

  private Collection<String> options(Subject subject) {
    Step step =
        subject instanceof Subject.Choice choice ? procedure.steps().get(choice.step()) : null;
    if (step instanceof Step.Choose choose) {
      return choose.options().stream().map(Step.Option::id).toList();
    }
    return step instanceof Step.Call call ? outcomes(call) : List.of();
  }

  /** How the procedure that a step calls can end and come back. */
  public Set<String> outcomes(Step.Call call) {
    Set<String> outcomes = new LinkedHashSet<>();
    Procedure called = library.procedures().get(call.procedure());
    if (called != null) {
      for (Step step : called.steps().values()) {
        if (step instanceof Step.Done done) {
          outcomes.add(done.outcome());
        }
      }
    }
    return outcomes;
  }

  Library library() {
    return library;
  }

  Procedure procedure() {
    return procedure;
  }

  Layout layout() {
    return layout;
  }

  public List<Domain> domains() {
    return domains;
  }

  /** The subjects with more cells than can be walked. */
  public List<Subject> tooMany() {
    return tooMany;
  }

  /**
   * Whether a subject is known only at the very next step: counts above one, and what changes by
   * itself with time and readings. To keep it would multiply the abstract states.
   */
  boolean fleeting(int at) {
    return fleeting[at];
  }

  private static boolean fleeting(Domain domain) {
    // A count is kept as long as it tells only whether a step was reached.
    boolean kept =
        !(domain.subject() instanceof Subject.Count)
            || (domain.cells().size() == 2 && domain.cells().contains(ONCE));
    return !kept || !Knowledge.of(domain.subject()).lasting();
  }

  private static final Cell ONCE = new Cell.Amount(0, 1);

  /** A state without what was known for one step only. A rod that was not turned seems sound. */
  AbstractState settled(AbstractState at) {
    AbstractState settled = at.copy();
    settled.keep(at, lasting, passing, List.of());
    if (!at.turned()) {
      set(settled, ROD, sound);
    }
    return settled;
  }

  /** The place of a subject, or -1 where no condition speaks of it. */
  public int index(Subject subject) {
    return index.getOrDefault(subject, -1);
  }

  /**
   * The mask of a subject's cells of which {@code so} holds; none where no condition speaks of it.
   */
  int where(Subject subject, Predicate<Cell> so) {
    int at = index(subject);
    return at < 0 ? 0 : domains.get(at).where(so);
  }

  /** Sets the cells that are possible of a subject, if conditions speak of it. */
  void set(AbstractState now, Subject subject, int cells) {
    int at = index(subject);
    if (at >= 0) {
      now.mask(at, cells);
    }
  }

  /** Sets some subjects to unknown: every cell is possible. */
  void open(AbstractState now, Subject... subjects) {
    for (Subject subject : subjects) {
      int at = index(subject);
      if (at >= 0) {
        now.mask(at, domains.get(at).all());
      }
    }
  }

  /** The masks of all subjects with every cell possible. */
  int[] allMasks() {
    return domains.stream().mapToInt(Domain::all).toArray();
  }

  /** The mask of the cells of its subject in which a piece holds. */
  public int where(Condition piece) {
    int at = index(piece.subjects().iterator().next());
    return at < 0 ? 0 : domains.get(at).where(piece);
  }

  /** The subjects of a condition, in order of their places. */
  int[] subjects(Collection<Condition> conditions) {
    return conditions.stream()
        .flatMap(condition -> condition.subjects().stream())
        .mapToInt(this::index)
        .filter(at -> at >= 0)
        .distinct()
        .sorted()
        .toArray();
  }

  /** The subjects that branches ask for, and not only what steps expect. */
  Set<Subject> decided() {
    Set<Subject> decided = new LinkedHashSet<>();
    for (Step step : procedure.steps().values()) {
      step.fork().branches().forEach(branch -> decided.addAll(branch.when().subjects()));
    }
    return decided;
  }

  /** A condition on cases, each of which has a cell for each of some subjects. */
  interface OnCells {
    boolean holds(int[] cells);
  }

  /**
   * A condition as a test of masks of cells, since a fork is tried on many cases.
   *
   * @param subjects places of the subjects that a case has cells of, in order
   */
  OnCells onCells(Condition condition, int[] subjects) {
    return condition.match(
        all -> {
          OnCells[] parts = onCells(all.parts(), subjects);
          return cells -> count(parts, cells) == parts.length;
        },
        any -> {
          OnCells[] parts = onCells(any.parts(), subjects);
          return cells -> count(parts, cells) > 0;
        },
        not -> {
          OnCells part = onCells(not.part(), subjects);
          return cells -> !part.holds(cells);
        },
        atom -> {
          int at = index(atom.about());
          int place = Arrays.binarySearch(subjects, at);
          int mask = place < 0 ? 0 : domains.get(at).where(atom);
          return cells -> place >= 0 && (mask >> cells[place] & 1) == 1;
        });
  }

  private OnCells[] onCells(List<Condition> parts, int[] subjects) {
    return parts.stream().map(part -> onCells(part, subjects)).toArray(OnCells[]::new);
  }

  private static int count(OnCells[] parts, int[] cells) {
    int count = 0;
    for (OnCells part : parts) {
      count += part.holds(cells) ? 1 : 0;
    }
    return count;
  }

  /** Every condition a step states: those of its branches, and what it expects. */
  public static List<Condition> conditions(Step step) {
    List<Condition> all = new ArrayList<>();
    step.fork().branches().forEach(branch -> all.add(branch.when()));
    if (step.words().expects() != null) {
      all.add(step.words().expects());
    }
    return all;
  }
}
