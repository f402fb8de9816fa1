package quarterturn.session.engine;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Step;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;

/**
 * Puts what a technician is told together with what is asked next, whose answer confirms both.
 * Nothing of it is on record before that answer, so that a break in between leaves it undone.
 */
record Merging(Fold fold, Walk walk, Prompter prompter, ShortPath path) {
  /** So many are shown in front of a question; in a procedure that goes in circles, no more. */
  private static final int MOST = 6;

  /**
   * What is shown.
   *
   * @param state as it is once what was merged is done
   * @param confirms what goes on record before the answer, oldest first
   */
  record Merged(State state, Prompt prompt, List<Event> confirms) {}

  /** A prompt that was merged. */
  private record Earlier(PromptText said, boolean stands) {}

  /** What comes after a prompt that was merged. */
  private record Onward(State state, Prompt prompt, List<Event> events) {}

  /** The prompt of a state, with those before it that it may be shown together with. */
  Merged of(State state, Prompt prompt, Instant now) {
    List<Event> confirms = new ArrayList<>();
    List<Earlier> first = new ArrayList<>();
    State at = state;
    Prompt shown = prompt;
    while (shown instanceof Prompt.Tell && first.size() < MOST && mayMerge(at, now)) {
      Onward next = onward(at, shown, now);
      if (next == null) {
        break;
      }
      first.add(new Earlier(shown.said(), stands(at)));
      confirms.addAll(next.events());
      at = next.state();
      shown = next.prompt();
    }
    for (int i = first.size() - 1; i >= 0; i--) {
      shown = shown.after(first.get(i).said(), first.get(i).stands());
    }
    return new Merged(at, shown, confirms);
  }

  /** Whether what the present step brings about is on record already. */
  private boolean stands(State state) {
    return walk.step(state) instanceof Step.Tell tell && state.bench().hasAll(tell.establishes());
  }

  private boolean mayMerge(State state, Instant now) {
    return state.atStep() && (sets(state) || path.merges(state, walk.step(state), now));
  }

  /** Whether something is set on one string after the other: it is shown as one list. */
  private boolean sets(State state) {
    return walk.step(state) instanceof Step.Adjust && ShortPath.taken(state);
  }

  private @Nullable Onward onward(State state, Prompt tell, Instant now) {
    List<Event> events = new ArrayList<>();
    Event.Adjusted set = walk.adjusting(state);
    Event told = set == null ? new Event.Told(now, tell.said().step()) : set.at(now);
    events.add(told);
    State after = fold.apply(state, told);
    if (set != null && !after.place().equals(state.place())) {
      return null; // that was the last string, and what comes then is told by itself
    }
    Prompter.Next next = prompter.next(after, now);
    while (next instanceof Prompter.Next.Record record && record.event() instanceof Event.Passed) {
      events.add(record.event());
      after = fold.apply(after, record.event());
      next = prompter.next(after, now);
    }
    boolean sameStage =
        !after.position().entering()
            && !after.position().places().isEmpty()
            && after.place().procedure().equals(state.place().procedure());
    return sameStage && next instanceof Prompter.Next.Show show && takes(show.prompt())
        ? new Onward(after, show.prompt(), events)
        : null;
  }

  /** A hazard, a turn and a wait stand alone; so does an end. */
  private static boolean takes(Prompt prompt) {
    return prompt instanceof Prompt.Measure
        || prompt instanceof Prompt.Choose
        || prompt instanceof Prompt.Write
        || prompt instanceof Prompt.Tell;
  }
}
