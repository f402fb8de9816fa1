package quarterturn.session;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds the events of a session that its corrections did not withdraw. */
public final class Corrections {
  private Corrections() {}

  /**
   * The events that were not withdrawn, in order, corrections included. Each {@link
   * Event.Corrected} withdraws the last remaining answer before it, and the turn that was offered
   * or the wait that began because of that answer. At a turn that is asked for it withdraws
   * nothing; whether the turn was made is asked instead.
   */
  public static List<Event> standing(List<Event> events) {
    List<Event> out = new ArrayList<>();
    for (Event event : events) {
      int answer = event instanceof Event.Corrected ? lastAnswer(out) : -1;
      if (answer >= 0) {
        out.remove(answer);
        out.subList(answer, out.size())
            .removeIf(e -> e instanceof Event.Offered || e instanceof Event.WaitBegan);
      }
      out.add(event);
    }
    return out;
  }

  /** The answer that a correction after these events would withdraw, or null. */
  public static @Nullable Event withdrawn(List<Event> standing) {
    int answer = lastAnswer(standing);
    return answer < 0 ? null : standing.get(answer);
  }

  /** Index of the answer that can be withdrawn, or -1. */
  private static int lastAnswer(List<Event> standing) {
    boolean undone = false;
    for (int i = standing.size() - 1; i >= 0; i--) {
      Event event = standing.get(i);
      if (event.withdrawable()) {
        return i;
      }
      if (event instanceof Event.Offered && !undone) {
        return -1;
      }
      undone |= event instanceof Event.UndoAsked;
    }
    return -1;
  }
}
