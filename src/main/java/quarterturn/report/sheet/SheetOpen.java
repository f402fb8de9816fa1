package quarterturn.report.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.InWindow;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Quantity;
import quarterturn.report.SessionSteps;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.Stage;
import quarterturn.session.engine.Engine;

/**
 * Finds the work that is still to be done after a session: what the overview of the work shows as
 * stale, what was changed and not read since, and what was read out of its range.
 *
 * @param stages the state of each result, by which the bench says what comes next; empty where that
 *     is not known
 * @param changed ids of the changes made in the session
 */
record SheetOpen(List<Sheet.Row> rows, List<Stage> stages, Set<String> changed, Library library) {
  /** What an end may begin with, which is said here anyway. */
  private static final String WANTED = "Wanted of a " + Step.End.REPAIRER + ": ";

  /**
   * What is known of a session's results.
   *
   * @param all its events, oldest first
   */
  static SheetOpen of(List<Event> all, List<Sheet.Row> rows, Library library) {
    SessionSteps steps = new SessionSteps(library, all);
    Set<String> changed = new LinkedHashSet<>();
    for (Event event : Corrections.standing(all)) {
      String change = steps.change(event);
      if (change != null) {
        changed.add(change);
      }
    }
    return new SheetOpen(rows, stages(all, library), changed, library);
  }

  private static List<Stage> stages(List<Event> all, Library library) {
    try {
      return !all.isEmpty()
              && all.get(0) instanceof Event.Started started
              && library.procedures().containsKey(started.procedure())
          ? new Engine(library, new BeliefAdvisor()).handover(all).stages()
          : List.of();
    } catch (RecordMismatchException | IllegalArgumentException e) {
      // A record may outlive the procedure it was made with, or no longer fit it.
      return List.of();
    }
  }

  List<String> points(List<Sheet.Move> moves, Event.@Nullable Ended ended) {
    List<String> points = new ArrayList<>();
    if (ended == null) {
      points.add("The work is not finished: go on with it where it was left.");
    } else if (forRepairer(ended)) {
      points.add(reason(ended));
    }
    Set<Quantity> told = EnumSet.noneOf(Quantity.class);
    Set<Quantity> usable = EnumSet.noneOf(Quantity.class);
    for (Stage stage : stages) {
      Results.Result result = library.results().results().get(stage.id());
      Quantity quantity = result == null ? null : result.quantity();
      String point = quantity == null ? null : stale(stage);
      if (quantity != null && stage.status().usable()) {
        usable.add(quantity);
      }
      if (point != null && told.add(quantity)) {
        points.add(point);
      }
    }
    for (Sheet.Row row : rows) {
      String point = told.contains(row.quantity()) ? null : point(row);
      // What a later stage may use needs no further reading, though one string was left out.
      boolean used = row.left().spoiled() != null && usable.contains(row.quantity());
      if (point != null && !used) {
        points.add(point);
      }
    }
    if (moves.stream().anyMatch(move -> !move.sure())) {
      points.add(
          "After a break it was not sure how far the rod had been turned; where it stands from as"
              + " found is not sure either.");
    }
    return points;
  }

  /** Whether an end leaves something to a repairer. */
  static boolean forRepairer(Event.Ended ended) {
    return ended.handOver() || ended.why().contains(Step.End.REPAIRER);
  }

  private static String reason(Event.Ended ended) {
    String why =
        ended.why().isBlank()
            ? InWindow.shown(ended.outcome())
            : ended.why().replaceAll("\\s*\\R\\s*", " ");
    if (!why.startsWith(WANTED)) {
      return why.contains(Step.End.REPAIRER) ? why : "For a " + Step.End.REPAIRER + ": " + why;
    }
    return why;
  }

  /** What is stale, or was changed and never read: the same that the bench says comes next. */
  private @Nullable String stale(Stage stage) {
    String by = stage.by() == null ? stage.name() : title(stage.by());
    String next =
        by.equalsIgnoreCase(stage.name()) ? "; take it again" : "; take it again by: " + by;
    if (stage.status() == Stage.Status.STALE) {
      String reading = stage.reading().isEmpty() ? "" : " of " + stage.reading();
      return stage.name()
          + ": the reading"
          + reading
          + " is stale ("
          + stage.because()
          + ")"
          + next
          + ".";
    }
    if (stage.status() != Stage.Status.NOT_DONE) {
      return null;
    }
    return changed.stream()
        .filter(change -> library.results().spoils(change, stage.id()))
        .findFirst()
        .map(change -> stage.name() + ": not read since " + name(change) + next + ".")
        .orElse(null);
  }

  private String name(String change) {
    Results.Change known = library.results().changes().get(change);
    return known == null ? change.replace('-', ' ') : known.name();
  }

  private String title(String procedure) {
    Procedure known = library.procedures().get(procedure);
    return known == null ? procedure.replace('-', ' ') : known.title();
  }

  private static @Nullable String point(Sheet.Row row) {
    String what =
        ReadingWords.name(row.quantity()) + (row.string().isEmpty() ? "" : " on " + row.string());
    Sheet.Taken left = row.left();
    if (left.spoiled() != null) {
      return what
          + ": the last reading, "
          + ReadingWords.withUnit(left.read())
          + ", is stale ("
          + left.spoiled()
          + "); read it again.";
    }
    if (left.window() == null || !ReadingWords.out(left)) {
      return null;
    }
    return what
        + ": "
        + ReadingWords.withUnit(left.read())
        + " is out of its range, "
        + ReadingWords.window(row.quantity(), left.window())
        + ".";
  }
}
