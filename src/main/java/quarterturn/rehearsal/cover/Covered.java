package quarterturn.rehearsal.cover;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Way;

/**
 * The result of many simulated sessions of a procedure.
 *
 * @param procedure id of the procedure that was played
 * @param taken every way of it and of those it calls that a session took, in the files' order
 * @param never every way of them that no session took, with the reason if it is known
 * @param sessions how many were played
 * @param outcomes the words sessions ended with, each once, in alphabetical order
 * @param stuck sessions that could not go on, the first one for each place
 */
public record Covered(
    String procedure,
    List<Way> taken,
    List<Never> never,
    int sessions,
    List<String> outcomes,
    List<Stuck> stuck) {
  public Covered {
    taken = List.copyOf(taken);
    never = List.copyOf(never);
    outcomes = List.copyOf(outcomes);
    stuck = List.copyOf(stuck);
  }

  /** What was covered of the procedure itself. */
  public Covered own() {
    return of(way -> way.procedure().equals(procedure));
  }

  /** What was covered of the procedures it calls. */
  public Covered called() {
    return of(way -> !way.procedure().equals(procedure));
  }

  private Covered of(Predicate<Way> so) {
    return new Covered(
        procedure,
        taken.stream().filter(so).toList(),
        never.stream().filter(one -> so.test(one.way())).toList(),
        sessions,
        outcomes,
        stuck);
  }

  /** The number of ways. */
  public int ways() {
    return taken.size() + never.size();
  }

  /**
   * The ways that no session took although no reason against them is known, in the files' order.
   */
  public List<Never> open() {
    return never.stream().filter(never -> never.because() == null).toList();
  }

  /**
   * A way that no session took.
   *
   * @param reached how often its step was entered, in all sessions
   * @param because why no session of this procedure can take it, or null where that is not known
   */
  public record Never(Way way, int reached, @Nullable String because) {
    /** Whether the reason is that its step can only be reached by ways that can't be taken. */
    public boolean behind() {
      return Closed.BEHIND.equals(because);
    }
  }

  /**
   * A session that could not go on because of a fault in the procedure.
   *
   * @param outcome the outcome it ended with, or "astray" where its record no longer fits
   * @param why one sentence or more
   * @param last the last steps entered, as "relief/tune", the newest last
   */
  public record Stuck(String outcome, String why, List<String> last) {
    public Stuck {
      last = List.copyOf(last);
    }
  }
}
