package quarterturn.session.engine;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.session.Stage;

/**
 * Notes for a technician after an answer: which readings are out of their window, which results
 * went stale.
 */
record Answered(Library library, Walk walk) {
  /**
   * Notes for the prompt of a step.
   *
   * @param last the last answer's event
   */
  List<String> notes(State state, Step step, Event last, Instant now) {
    List<String> notes = new ArrayList<>();
    boolean goesOn =
        last instanceof Event.Read before
            && step instanceof Step.Measure next
            && next.quantity() == before.quantity();
    if (last instanceof Event.Read read && !goesOn) {
      String stands = stands(state, read.quantity());
      if (stands != null) {
        notes.add(stands);
      }
    }
    String stale = stale(state, last, now);
    if (stale != null) {
      notes.add(stale);
    }
    return notes;
  }

  /**
   * A note on how a quantity stands to its window on every string, or null; null for relief, which
   * has a note of its own.
   */
  private @Nullable String stands(State state, Quantity quantity) {
    Kind kind = walk.kind(state);
    Style style = state.style();
    boolean windows = kind != null && kind.windows().containsKey(quantity);
    if (kind == null || style == null || !windows || quantity == Quantity.RELIEF) {
      return null;
    }
    List<String> out = new ArrayList<>();
    int read = 0;
    for (int i = 0; i < kind.strings().size(); i++) {
      Verdict verdict = Values.verdict(state, library.results(), kind, style, quantity, i);
      read += verdict == Verdict.NOT_MEASURED ? 0 : 1;
      if (verdict != Verdict.NOT_MEASURED && verdict != Verdict.IN) {
        AtString at = new AtString(state, library.results(), kind, style, quantity, 0, null, i);
        out.add(kind.strings().get(i) + " " + at.value() + ", range " + at.target());
      }
    }
    if (read == 0) {
      return null;
    }
    String name = library.results().of(quantity).get(0).name();
    return out.isEmpty()
        ? name + ": in range on every string that was read."
        : name + " out of range: " + String.join("; ", out) + ".";
  }

  /** A note on the results that the last answer made stale, or null. */
  private @Nullable String stale(State state, Event last, Instant now) {
    boolean done =
        last instanceof Event.Adjusted || last instanceof Event.Told || last instanceof Event.Chose;
    if (!done || state.history().changes().isEmpty()) {
      return null;
    }
    Instant at = state.history().changes().get(state.history().changes().size() - 1).at();
    if (!at.equals(last.at())) {
      return null;
    }
    String names =
        walk.stages(state, now).all().stream()
            .filter(stage -> stage.status() == Stage.Status.STALE && at.equals(stage.since()))
            .map(Stage::name)
            .collect(Collectors.joining(", "));
    return names.isEmpty() ? null : "Stale now: " + names + ".";
  }
}
