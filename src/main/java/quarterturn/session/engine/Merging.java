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
 * Merges a technician's instructions with the next question, whose answer confirms both. Nothing of
 * them is recorded before that answer, so that a break leaves them undone.
 */
record Merging(Fold fold, Walk walk, Prompter prompter, ShortPath path) {
  /** Most instructions merged with one question, also in a procedure that loops. */
  private static final int MOST = 6;

  /**
   * A prompt to show with the instructions merged into it.
   *
   * @param state the state once the instructions are done
   * @param confirms the events to record before the answer, oldest first
   */
  record Merged(State state, Prompt prompt, List<Event> confirms) {}

  /** An instruction that is merged into a later prompt. */
  private record Earlier(PromptText said, boolean stands) {}

  /** The state, prompt and events after an instruction. */
  private record Onward(State state, Prompt prompt, List<Event> events) {}

  /** The prompt of a state; an instruction is merged with what follows where it may be. */
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

  /** Whether the effect of the present step is already on record. */
  private boolean stands(State state) {
    return walk.step(state) instanceof Step.Tell tell && state.bench().hasAll(tell.establishes());
  }

  private boolean mayMerge(State state, Instant now) {
    return state.atStep() && (sets(state) || path.merges(state, walk.step(state), now));
  }

  /** Whether the present step sets one string after the other, which is shown as one list. */
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

  /**
   * Whether instructions can be merged into a prompt; not into a hazard, a turn, a wait or an end.
   */
  private static boolean takes(Prompt prompt) {
    return prompt instanceof Prompt.Measure
        || prompt instanceof Prompt.Choose
        || prompt instanceof Prompt.Write
        || prompt instanceof Prompt.Tell;
  }
}
