package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Verdict;

/** The ways on from one fork, for what may be known when it is reached. */
public final class Fan {
  /** The place of the case in which no branch holds and there is no {@code otherwise}. */
  public static final int HOLE = -1;

  /** The place of the way that {@code otherwise} takes, or a plain {@code go}. */
  public static final int REST = -2;

  /** Most cases of a fork that are looked at one by one. */
  private static final int MOST_CASES = 50_000;

  private final Frame frame;
  private final Branch.Fork fork;
  private final int[] subjects;

  /** Places among the subjects, those that are asked about least first: they are joined first. */
  private final List<Integer> seldomFirst;

  private final List<Frame.OnCells> tests;
  private final Map<Masks, Spread> known = new ConcurrentHashMap<>();

  /** Masks that are equal by their content, as a map's key. */
  private record Masks(int[] masks) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Masks m && Arrays.equals(masks, m.masks);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(masks);
    }
  }

  Fan(Frame frame, Branch.Fork fork) {
    this.frame = frame;
    this.fork = fork;
    List<Condition> conditions = fork.branches().stream().map(Branch::when).toList();
    this.subjects = frame.subjects(conditions);
    this.seldomFirst =
        IntStream.range(0, subjects.length)
            .boxed()
            .sorted(Comparator.comparing(i -> frame.domains().get(subjects[i]).pieces().size()))
            .toList();
    this.tests = conditions.stream().map(one -> frame.onCells(one, subjects)).toList();
  }

  /**
   * A way on that some case takes.
   *
   * @param branch its place, {@link #REST} or {@link #HOLE}
   * @param masks what is known then of each of the fork's subjects
   */
  public record Taken(int branch, int[] masks) {}

  /**
   * Two branches that hold in one case and lead to different steps.
   *
   * @param cells one case
   */
  public record Overlap(int first, int second, int[] cells) {}

  /**
   * All outcomes of a fork.
   *
   * @param whole whether every case was looked at
   * @param wanting whether it has a hole or an overlap, or is not whole
   */
  public record Spread(List<Taken> taken, List<Overlap> overlaps, boolean whole, boolean wanting) {
    Spread(List<Taken> taken, List<Overlap> overlaps, boolean whole) {
      this(
          taken,
          overlaps,
          whole,
          !whole || !overlaps.isEmpty() || taken.stream().anyMatch(t -> t.branch() == HOLE));
    }
  }

  /** The step that a way on leads to, or null where it is a hole. */
  @Nullable String to(Taken taken) {
    return taken.branch() < 0 ? fork.otherwise() : fork.branches().get(taken.branch()).go();
  }

  public int[] subjects() {
    return subjects;
  }

  public Branch.Fork fork() {
    return fork;
  }

  /** The ways on from the fork in an abstract state. */
  public Spread spread(AbstractState at) {
    int[] masks = new int[subjects.length];
    for (int i = 0; i < masks.length; i++) {
      masks[i] = at.mask(subjects[i]);
    }
    return spread(masks);
  }

  /** The ways on where each of the fork's subjects may stand as its mask says. */
  public Spread spread(int[] masks) {
    return known.computeIfAbsent(new Masks(masks), key -> spreadOut(masks));
  }

  private Spread spreadOut(int[] masks) {
    long cases = 1;
    for (int mask : masks) {
      cases *= Integer.bitCount(mask);
    }
    if (cases > MOST_CASES) {
      return new Spread(blindly(masks), List.of(), false);
    }
    Map<Integer, List<int[]>> by = new LinkedHashMap<>();
    Map<List<Integer>, Overlap> overlaps = new LinkedHashMap<>();
    cases(masks, 0, new int[masks.length], cells -> sort(cells, by, overlaps));
    List<Taken> taken = new ArrayList<>();
    by.forEach((branch, all) -> taken.addAll(taken(branch, all)));
    return new Spread(taken, List.copyOf(overlaps.values()), true);
  }

  /** Every branch as a way on, with nothing learned from its condition. */
  private List<Taken> blindly(int[] masks) {
    List<Taken> all = new ArrayList<>();
    for (int i = 0; i < fork.branches().size(); i++) {
      all.add(new Taken(i, masks));
    }
    if (fork.otherwise() != null) {
      all.add(new Taken(REST, masks));
    }
    return all;
  }

  private interface Case {
    void at(int[] cells);
  }

  private static void cases(int[] masks, int place, int[] cells, Case each) {
    if (place == masks.length) {
      each.at(cells.clone());
      return;
    }
    for (int cell = 0; cell < Integer.SIZE; cell++) {
      if ((masks[place] >> cell & 1) == 1) {
        cells[place] = cell;
        cases(masks, place + 1, cells, each);
      }
    }
  }

  private void sort(
      int[] cells, Map<Integer, List<int[]>> by, Map<List<Integer>, Overlap> overlaps) {
    int first = HOLE;
    for (int i = 0; i < fork.branches().size(); i++) {
      if (!tests.get(i).holds(cells)) {
        continue;
      }
      if (first == HOLE) {
        first = i;
      } else if (!fork.branches().get(first).go().equals(fork.branches().get(i).go())) {
        overlaps.putIfAbsent(List.of(first, i), new Overlap(first, i, cells));
      }
    }
    int way = first == HOLE && fork.otherwise() != null ? REST : first;
    by.computeIfAbsent(way, w -> new ArrayList<>()).add(cells);
  }

  /**
   * The ways on by one branch, few but exact: cases that differ in one subject alone are one way,
   * so that nothing is told apart that the branch does not tell apart.
   */
  private List<Taken> taken(int branch, List<int[]> cases) {
    Collection<int[]> boxes =
        cases.stream().map(cells -> Arrays.stream(cells).map(cell -> 1 << cell).toArray()).toList();
    for (int subject : seldomFirst) {
      Map<Masks, int[]> joined = new LinkedHashMap<>();
      for (int[] box : boxes) {
        int[] others = box.clone();
        others[subject] = 0;
        joined.computeIfAbsent(new Masks(others), o -> others.clone())[subject] |= box[subject];
      }
      boxes = joined.values();
    }
    return boxes.stream().map(box -> new Taken(branch, box)).toList();
  }

  /** One case in words: "relief undecided, leaning nowhere and rod-place is pocket". */
  public String words(int[] cells) {
    return IntStream.range(0, subjects.length)
        .mapToObj(
            i -> {
              Domain domain = frame.domains().get(subjects[i]);
              return CellWords.of(domain.subject(), domain.cells().get(cells[i]));
            })
        .collect(Collectors.joining(" and "));
  }

  /** A case of some masks, in words: one in which something was read, where there is such. */
  public String words(Taken taken) {
    return words(
        IntStream.range(0, subjects.length).map(i -> telling(i, taken.masks()[i])).toArray());
  }

  private static final Cell UNREAD = new Cell.Strings(Set.of(Verdict.NOT_MEASURED));

  private int telling(int place, int mask) {
    int first = Integer.numberOfTrailingZeros(mask);
    int others = mask & mask - 1;
    Cell cell = frame.domains().get(subjects[place]).cells().get(first);
    return others != 0 && (cell.equals(Cell.Standing.NOTHING) || cell.equals(UNREAD))
        ? Integer.numberOfTrailingZeros(others)
        : first;
  }
}
