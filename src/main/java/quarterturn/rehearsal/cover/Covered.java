package quarterturn.rehearsal.cover;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Way;

/**
 * What many simulated sessions of a procedure came to.
 *
 * @param procedure id of the procedure that was played
 * @param taken every way of it and of those it calls that some session took, in the files' order
 * @param never every way that none took, with what can be said of it
 * @param sessions how many were played
 * @param outcomes the words sessions ended with, each once, in alphabetical order
 * @param stuck sessions that could not go on; each place once, at its first time
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

  /** Ways that no session took though, for all the files tell, one might; in the files' order. */
  public List<Never> open() {
    return never.stream().filter(never -> never.because() == null).toList();
  }

  /**
   * A way that no session took.
   *
   * @param reached how often its step was entered, in all sessions
   * @param because why no session of this procedure can take it, or null where that can't be told
   */
  public record Never(Way way, int reached, @Nullable String because) {
    /** Whether only ways that can't be taken lead to its step. */
    public boolean behind() {
      return Closed.BEHIND.equals(because);
    }
  }

  /**
   * A session that could not go on: the procedure is at fault.
   *
   * @param outcome the word it ended with, or "astray" where its record no longer fits
   * @param why one sentence or more
   * @param last the last steps that were entered, as "relief/tune", the last one last
   */
  public record Stuck(String outcome, String why, List<String> last) {
    public Stuck {
      last = List.copyOf(last);
    }
  }
}
