package quarterturn.session.engine;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.WireList;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Shortcut;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.ConditionWords;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Bench;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.unit.Length;
import quarterturn.unit.Worded;

/**
 * Decides which steps a technician can skip, and anybody where they give nothing new. Whatever a
 * procedure says, no step is skipped that is marked never-skip, changes or establishes something,
 * or warns of a hazard, and no wait after something was done to the instrument.
 */
record ShortPath(Walk walk) {
  /** Whether the present procedure uses the short path. */
  static boolean taken(State state) {
    return state.started().role() == Role.TECHNICIAN
        && !state.position().nowhere()
        && !state.place().procedure().equals(state.position().stepwise());
  }

  /** Why the present step is skipped, or null where it is not. */
  @Nullable String skipped(State state, Step step, Instant now) {
    String known =
        step instanceof Step.Choose choose
            ? known(state, choose)
            : step instanceof Step.Note note ? noted(state, note) : null;
    if (known != null) {
      return "on record: " + known;
    }
    Shortcut shortcut = step.words().shortcut();
    // Pitch drifts in an open session.
    if (state.history().timely(now) && state.bench().passes(step) && all(state, step, now)) {
      return "still so";
    }
    if (shortcut == null || shortcut.way() != Shortcut.Way.SKIP) {
      return null;
    }
    if (!taken(state) || !idle(state, step) || !holds(state, shortcut, now)) {
      return null;
    }
    return shortcut.when() == null ? "short path" : ConditionWords.of(shortcut.when());
  }

  /** Whether, of a step that reads each string, each was read. */
  private boolean all(State state, Step step, Instant now) {
    return !(step instanceof Step.Measure measure && measure.which() == Which.EACH)
        || (state.position().string() == 0 && walk.nextRead(state, measure, 0, now) < 0);
  }

  /**
   * The id of the option that is on record of how the instrument is made, or null where it is asked
   * for.
   */
  @Nullable String known(State state, Step.Choose choose) {
    Step.Option on = onRecord(state, choose);
    return on == null || toConfirm(state, choose) ? null : on.id();
  }

  /**
   * What is on record of a note on how the instrument is made, such as the diameters of the strings
   * that are on, as last noted or as on file; else null.
   */
  @Nullable String noted(State state, Step.Note note) {
    Recorded what = note.records();
    if ((what != Recorded.GAUGES && what != Recorded.ROD_KEY) || note.words().neverSkip()) {
      return null;
    }
    String noted = made(state, walk.library(), what);
    if (what != Recorded.GAUGES) {
      return noted;
    }
    Event.Own own = state.started().own();
    return noted != null || own == null || own.gaugesMm().isEmpty()
        ? noted
        : own.gaugesMm().stream()
            .map(mm -> WireList.inch(Length.mm(mm)))
            .collect(Collectors.joining(" "));
  }

  private Step.@Nullable Option onRecord(State state, Step.Choose choose) {
    Recorded what = choose.records();
    if (what == null || choose.words().neverSkip()) {
      return null;
    }
    String made = made(state, walk.library(), what);
    return choose.options().stream()
        .filter(option -> option.id().equals(made) && option.changes() == null)
        .findFirst()
        .orElse(null);
  }

  /** Whether what is on record was said to differ. */
  private static boolean differs(State state) {
    String said = state.position().chosen().get(EngineQuestions.AS_RECORDED);
    return said != null && !said.equals(EngineQuestions.SAME);
  }

  /**
   * Whether a step takes from the record what a turn needs, and nobody has said yet that it is so.
   */
  boolean toConfirm(State state, Step step) {
    Step.Option on = step instanceof Step.Choose choose ? onRecord(state, choose) : null;
    return on != null
        && state.started().role() == Role.BEGINNER
        && !state.position().chosen().containsKey(EngineQuestions.AS_RECORDED)
        && !state.bench().hasAll(on.establishes());
  }

  /** What is on record of this procedure's questions, a line each. */
  List<String> record(State state) {
    Set<String> lines = new LinkedHashSet<>();
    for (Step step : walk.library().procedure(state.place().procedure()).steps().values()) {
      Step.Option on = step instanceof Step.Choose choose ? onRecord(state, choose) : null;
      String answer =
          on != null ? on.label() : step instanceof Step.Note note ? noted(state, note) : null;
      if (answer != null) {
        lines.add(step.words().forRole(Role.TECHNICIAN) + " " + answer + ".");
      }
    }
    return List.copyOf(lines);
  }

  /** A line for a technician of what is on record, each as it is typed where it differs. */
  Optional<String> line(State state) {
    List<Bench.OnRecord> all = all(state);
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(
            all.stream()
                .map(one -> one.step() + " " + one.answer())
                .collect(Collectors.joining("; ", "As recorded: ", ". Type what differs.")));
  }

  /** What is on record for the questions of all procedures that were not come to yet, once each. */
  List<Bench.OnRecord> all(State state) {
    Map<Recorded, Bench.OnRecord> all = new LinkedHashMap<>();
    for (Procedure procedure : walk.library().procedures().values()) {
      for (Step step : procedure.steps().values()) {
        Recorded what = step.records();
        Step.Option option = step instanceof Step.Choose choose ? onRecord(state, choose) : null;
        String answer =
            option != null
                ? option.id()
                : step instanceof Step.Note note ? noted(state, note) : null;
        boolean asked = state.position().chosen().containsKey(procedure.id() + "/" + step.id());
        if (what != null && answer != null && !asked) {
          all.putIfAbsent(what, new Bench.OnRecord(what, step.id(), answer));
        }
      }
    }
    return List.copyOf(all.values());
  }

  /**
   * What is on record of how the instrument is made: the word of its own fact, or else of what was
   * answered in this session or before it; null for none.
   */
  static @Nullable String made(State state, Library library, Recorded what) {
    String told = state.position().chosen().get(EngineQuestions.differing(what));
    String asked = answered(state, library, what);
    String said = asked != null ? asked : told;
    if (said != null || differs(state)) {
      return said;
    }
    Event.Own own = state.started().own();
    Worded fact = own == null ? null : fact(own, what);
    return fact != null
        ? fact.word()
        : state.started().known().stream()
            .filter(known -> known.what() == what)
            .map(Event.Known::answer)
            .findFirst()
            .orElse(null);
  }

  private static @Nullable String answered(State state, Library library, Recorded what) {
    Map<String, String> chosen = state.position().chosen();
    for (Procedure procedure : library.procedures().values()) {
      for (Step step : procedure.steps().values()) {
        String said = chosen.get(procedure.id() + "/" + step.id());
        if (said != null && step.records() == what && what.names(said)) {
          return said;
        }
      }
    }
    return null;
  }

  private static @Nullable Worded fact(Event.Own own, Recorded what) {
    return switch (what) {
      case BRIDGE -> own.bridge();
      case NUT -> own.nut();
      case ROD -> own.rod();
      case PICKUP -> own.pickup();
      default -> null;
    };
  }

  /**
   * The wait for the neck to settle, where it was passed over and nobody has said yet that the
   * strings had stood for so long; else null. The first reading on a string says so.
   */
  Step.@Nullable Wait unwaited(State state) {
    boolean said =
        state.history().readings().stream()
            .anyMatch(one -> one.counts() && one.read().quantity().onString());
    if (said) {
      return null;
    }
    Event last =
        Lists.last(
            state.log(),
            event ->
                (event instanceof Event.Read read && read.quantity().onString())
                    || (event instanceof Event.Passed passed && settling(state, passed) != null));
    return last instanceof Event.Passed passed ? settling(state, passed) : null;
  }

  private Step.@Nullable Wait settling(State state, Event.Passed passed) {
    return walk.step(state, passed.step()) instanceof Step.Wait wait
            && wait.establishes().contains(Fact.SETTLED)
            && !Shortcut.once(wait)
        ? wait
        : null;
  }

  private static boolean idle(State state, Step step) {
    if (step.words().neverSkip() || !step.words().hazards().isEmpty()) {
      return false;
    }
    if (step instanceof Step.Tell tell) {
      return tell.establishes().isEmpty() && tell.changes() == null;
    }
    boolean began = state.pending().waiting() != null;
    return step instanceof Step.Wait wait
        && !wait.rest()
        && !began
        && state.history().changes().isEmpty();
  }

  /** Whether the present step is merged with what comes next. */
  boolean merges(State state, Step step, Instant now) {
    Shortcut shortcut = step.words().shortcut();
    return shortcut != null
        && shortcut.way() == Shortcut.Way.MERGE
        && step instanceof Step.Tell tell
        && tell.changes() == null
        && !step.words().neverSkip()
        && taken(state)
        && holds(state, shortcut, now);
  }

  private boolean holds(State state, Shortcut shortcut, Instant now) {
    return shortcut.when() == null || walk.holds(state, shortcut.when(), now);
  }
}
