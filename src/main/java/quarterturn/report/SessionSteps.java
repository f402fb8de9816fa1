package quarterturn.report;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.session.Event;
import quarterturn.session.Place;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.engine.Engine;

/**
 * Finds the step that an event belongs to. An event only names its step, and procedures that call
 * each other may use one name twice. Where the record still fits its procedures, the session's own
 * way tells which it was; else the procedure of the event before is searched first.
 */
public final class SessionSteps {
  private final List<Procedure> procedures = new ArrayList<>();
  private final Library library;
  private final Map<Event, Place> places;

  /**
   * @param events all events of the session, oldest first
   */
  public SessionSteps(Library library, List<Event> events) {
    this.library = library;
    procedures.addAll(library.procedures().values());
    String main =
        !events.isEmpty() && events.get(0) instanceof Event.Started started
            ? started.procedure()
            : "";
    procedures.stream().filter(p -> p.id().equals(main)).findFirst().ifPresent(this::atWork);
    this.places = places(events, main);
  }

  private Map<Event, Place> places(List<Event> events, String main) {
    try {
      return library.procedures().containsKey(main)
          ? new Engine(library, new BeliefAdvisor()).places(events)
          : Map.of();
    } catch (RecordMismatchException | IllegalArgumentException e) {
      // A record may outlive the procedure it was made with, or no longer fit it.
      return new IdentityHashMap<>();
    }
  }

  private void atWork(Procedure procedure) {
    procedures.remove(procedure);
    procedures.add(0, procedure);
  }

  /** Labels for the step of an event. */
  public Labels labels(Event event, String step) {
    Place place = places.get(event);
    Procedure sure = place == null ? null : library.procedures().get(place.procedure());
    if (sure != null && sure.steps().containsKey(step)) {
      atWork(sure);
    }
    for (Procedure procedure : List.copyOf(procedures)) {
      if (procedure.steps().containsKey(step)) {
        atWork(procedure);
        return new Labels(library, procedure);
      }
    }
    return new Labels(library, null);
  }

  /** Whether a step is a wait. */
  public boolean waits(String step) {
    return procedures.stream().anyMatch(p -> p.steps().get(step) instanceof Step.Wait);
  }

  /** Id of the change to the instrument that an event makes or reports, or null. */
  public @Nullable String change(Event event) {
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
          : step(told, told.step()) instanceof Step.Tell tell ? tell.changes() : null;
    }
    if (event instanceof Event.Chose chose) {
      return chose.changes() != null ? chose.changes() : chosen(chose);
    }
    return null;
  }

  private @Nullable String chosen(Event.Chose chose) {
    if (step(chose, chose.step()) instanceof Step.Choose choose) {
      for (Step.Option option : choose.options()) {
        if (option.id().equals(chose.option())) {
          return option.changes();
        }
      }
    }
    return null;
  }

  private @Nullable Step step(Event event, String id) {
    Procedure procedure = labels(event, id).procedure();
    return procedure == null ? null : procedure.steps().get(id);
  }
}
