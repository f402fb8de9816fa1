package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.engine.Exact;

/** The situations that the checker walked of a procedure and of those it calls. */
public final class Walked {
  private final Library library;
  private final Calls calls;
  private final Map<Reachability, Set<Subject>> decided = new HashMap<>();

  public Walked(Library library) {
    this.library = library;
    this.calls = new Calls(library, new Walks());
  }

  /** Why no situation at the state's step contains the state, the nearest one's lack; or null. */
  public @Nullable String misses(Exact exact) {
    Reachability paths = calls.paths(library.procedure(exact.place().procedure()));
    Map<Condition, Boolean> holds = new HashMap<>();
    Map<Quantity, Freshness> held = new HashMap<>();
    for (Quantity quantity : Quantity.values()) {
      held.put(quantity, exact.held(quantity));
    }
    int[] cells = new int[paths.frame().domains().size()];
    for (int i = 0; i < cells.length; i++) {
      Domain domain = paths.frame().domains().get(i);
      List<Boolean> so = new ArrayList<>();
      for (Condition piece : domain.pieces()) {
        so.add(holds.computeIfAbsent(piece, exact::holds));
      }
      cells[i] = cell(domain, so);
      if (cells[i] < 0) {
        return "no cell of " + domain.subject() + " is like " + domain.pieces() + " " + so;
      }
    }
    Set<Subject> asked = decided.computeIfAbsent(paths, walked -> walked.frame().decided());
    List<String> best = null;
    for (Reachability.Node node : paths.at(exact.place().step())) {
      AbstractState at = exact.arrived() ? node.at() : paths.frame().settled(node.at());
      List<String> lacks = lacks(paths.frame(), at, exact, held, cells, asked);
      if (lacks.isEmpty()) {
        return null;
      }
      if (best == null || lacks.size() < best.size()) {
        best = lacks;
      }
    }
    return best == null ? "never reached" : String.join("; ", best);
  }

  /** Whether it matters in a procedure that the rod was turned. */
  private static boolean turns(Frame frame) {
    return frame.index(new Subject.Neck()) >= 0
        || frame.index(new Subject.Rod()) >= 0
        || frame.index(new Subject.Feeling()) >= 0
        || frame.procedure().steps().values().stream().anyMatch(s -> s instanceof Step.TurnRod);
  }

  private static int cell(Domain domain, List<Boolean> so) {
    for (int i = 0; i < domain.cells().size(); i++) {
      Cell cell = domain.cells().get(i);
      if (domain.pieces().stream().map(piece -> piece.holds(about -> cell)).toList().equals(so)) {
        return i;
      }
    }
    return -1;
  }

  private static List<String> lacks(
      Frame frame,
      AbstractState at,
      Exact exact,
      Map<Quantity, Freshness> held,
      int[] cells,
      Set<Subject> decided) {
    List<String> lacks = new ArrayList<>();
    for (Fact fact : Fact.values()) {
      boolean bad = fact == Fact.NECK_LOOSE ? exact.bench().has(fact) : at.has(fact);
      boolean same = at.has(fact) == exact.bench().has(fact);
      if (bad && !same) {
        lacks.add(fact + " is " + at.has(fact));
      }
    }
    for (Quantity quantity : Quantity.values()) {
      Freshness walked = at.held(quantity);
      Freshness is = held.getOrDefault(quantity, Freshness.NEVER);
      boolean contains =
          walked == Freshness.FRESH
              ? is == Freshness.FRESH || is == Freshness.AGED
              : !walked.usable() || is.usable() || is == Freshness.NEVER;
      if (!contains) {
        lacks.add(quantity + " held " + walked + " is " + is);
      }
    }
    if (turns(frame) && at.turned() != exact.bench().turned()) {
      lacks.add("turned is " + at.turned());
    }
    if (at.dayLeft() && exact.dayUsed()) {
      lacks.add("day used");
    }
    for (int i = 0; i < cells.length; i++) {
      Subject subject = frame.domains().get(i).subject();
      if (subject instanceof Subject.Choice && !decided.contains(subject)) {
        // What is only expected of an answer is about this time through.
        continue;
      }
      if ((at.mask(i) >> cells[i] & 1) == 0) {
        Domain domain = frame.domains().get(i);
        lacks.add(
            domain.subject()
                + " is "
                + CellWords.of(domain.subject(), domain.cells().get(cells[i]))
                + " not in "
                + Integer.toBinaryString(at.mask(i)));
      }
    }
    return lacks;
  }
}
