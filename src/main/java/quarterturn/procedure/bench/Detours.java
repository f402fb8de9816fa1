package quarterturn.procedure.bench;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.kind.Quantity;

/** The steps that a session goes back to, whatever a procedure's steps say. */
public final class Detours {
  private final Procedure procedure;

  /** Found when first asked for, since a walk asks again and again. */
  private @Nullable Set<String> turns;

  private @Nullable Set<String> readings;

  public Detours(Procedure procedure) {
    this.procedure = procedure;
  }

  /** The steps that seat a neck. */
  public List<String> seating() {
    return telling(Fact.NECK_FAST);
  }

  private List<String> telling(Fact fact) {
    return procedure.steps().values().stream()
        .filter(step -> step instanceof Step.Tell && step.establishes().contains(fact))
        .map(Step::id)
        .toList();
  }

  /** The step that brings the strings to pitch; on a loose neck, the one that seats it first. */
  public String retune(BenchState bench) {
    List<String> seating = bench.has(Fact.NECK_LOOSE) ? seating() : List.of();
    return seating.isEmpty() ? procedure.retune() : seating.get(0);
  }

  /** The step that slackens the strings before a loosening is taken back, or null. */
  public @Nullable String undoing() {
    return telling(Fact.DETUNED).stream()
        .filter(Ways.undoNext(procedure)::contains)
        .findFirst()
        .orElse(null);
  }

  /** Whether a step leaves the strings off pitch: it may have been done and not yet confirmed. */
  public static boolean slackens(Results results, Step step, BenchState bench) {
    return step instanceof Step.Tell tell && !bench.told(results, tell).has(Fact.AT_PITCH);
  }

  /**
   * The step at which a session goes on after a call: a break in it may have cost the pitch that
   * the steps after it take for granted.
   *
   * @param to the step that the call leads to
   * @param bench as the call left it
   */
  public String afterCall(String to, BenchState bench) {
    return !bench.has(Fact.AT_PITCH) && readingAhead(to) ? retune(bench) : to;
  }

  private boolean readingAhead(String step) {
    readings = readings == null ? Ways.readingBeforeTuning(procedure) : readings;
    return readings.contains(step);
  }

  private boolean turnAhead(String step) {
    turns = turns == null ? Ways.turnBeforeReading(procedure) : turns;
    return turns.contains(step);
  }

  /** Whether it matters at a step that the strings are at pitch: one is read, or the rod turned. */
  public boolean pitchMatters(String step) {
    return readingAhead(step) || turnAhead(step);
  }

  /**
   * The step at which a session goes on after a break: before a turn the neck is read anew, and
   * before a string is read its pitch is seen to.
   *
   * @param bench as it was left
   * @param drifted whether the strings, then at pitch, may not be any more
   * @param waiting whether a wait of this step is under way
   * @return a step, or null where it goes on as it was left
   */
  public @Nullable String afterBreak(
      Step step, BenchState bench, boolean drifted, boolean waiting) {
    boolean turnAhead =
        bench.held(Quantity.RELIEF) == Freshness.FRESH && !waiting && turnAhead(step.id());
    boolean readingAhead =
        (waiting && step instanceof Step.Wait wait && !wait.rest()) || readingAhead(step.id());
    boolean tunes = drifted ? turnAhead || readingAhead : turnAhead && !bench.has(Fact.AT_PITCH);
    return tunes ? retune(bench) : turnAhead ? procedure.reread() : null;
  }
}
