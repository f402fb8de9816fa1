package quarterturn.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.report.Labels;
import quarterturn.session.Event;

/**
 * Finds the step that an event belongs to. An event only names its step, and procedures that call
 * each other may use one name twice, so the procedure of the event before is searched first.
 */
final class SheetSteps {
  /** Prefix of the ids of changes that put other strings on. */
  static final String NEW = "new-";

  private final List<Procedure> procedures = new ArrayList<>();
  private final Library library;

  /**
   * @param main id of the procedure that the session began with
   */
  SheetSteps(Library library, String main) {
    this.library = library;
    procedures.addAll(library.procedures().values());
    procedures.stream().filter(p -> p.id().equals(main)).findFirst().ifPresent(this::atWork);
  }

  private void atWork(Procedure procedure) {
    procedures.remove(procedure);
    procedures.add(0, procedure);
  }

  /** Labels for a step; its procedure is searched first from then on. */
  Labels labels(String step) {
    for (Procedure procedure : List.copyOf(procedures)) {
      if (procedure.steps().containsKey(step)) {
        atWork(procedure);
        return new Labels(library, procedure);
      }
    }
    return new Labels(library, null);
  }

  /** Whether a step is a wait. */
  boolean waits(String step) {
    return procedures.stream().anyMatch(p -> p.steps().get(step) instanceof Step.Wait);
  }

  /** Id of the change to the instrument that an event makes or reports, or null. */
  @Nullable String change(Event event) {
    if (event instanceof Event.Turned turned) {
      return turned.turn().turns() == 0 ? null : Results.ROD;
    }
    if (event instanceof Event.Recalled recalled) {
      return recalled.turned().turns() == 0 ? null : Results.ROD;
    }
    if (event instanceof Event.Adjusted adjusted) {
      return adjusted.change();
    }
    if (event instanceof Event.Told told) {
      return told.changes() != null
          ? told.changes()
          : step(told.step()) instanceof Step.Tell tell ? tell.changes() : null;
    }
    if (event instanceof Event.Chose chose) {
      return chose.changes() != null ? chose.changes() : chosen(chose);
    }
    return null;
  }

  private @Nullable String chosen(Event.Chose chose) {
    if (step(chose.step()) instanceof Step.Choose choose) {
      for (Step.Option option : choose.options()) {
        if (option.id().equals(chose.option())) {
          return option.changes();
        }
      }
    }
    return null;
  }

  private @Nullable Step step(String id) {
    Procedure procedure = labels(id).procedure();
    return procedure == null ? null : procedure.steps().get(id);
  }
}
