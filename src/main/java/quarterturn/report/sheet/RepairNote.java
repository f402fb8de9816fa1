package quarterturn.report.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.InWindow;
import quarterturn.procedure.Library;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.report.PlayedKind;
import quarterturn.report.Summary;
import quarterturn.report.TrailLine;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.Handover;
import quarterturn.session.Overview.Entry;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.Stage;
import quarterturn.session.engine.Engine;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;

/**
 * The note that goes with an instrument to a repairer, a page at most: what it comes for, what is
 * wanted, what was read and tried, how it stands, and what follows the repair.
 */
public final class RepairNote {
  public static final String TITLE = "Note for the repairer";

  /** Most readings in the table, so that a note keeps to its page. */
  private static final int MOST_ROWS = 8;

  private static final String NO_FINDING = "Readings by the player, not a repairer's finding.";

  private final Sheet sheet;
  private final List<Event> events;
  private final Library library;
  private final PlayedKind played;
  private final Handover over;

  private RepairNote(Sheet sheet, List<Event> events, Library library) {
    this.sheet = sheet;
    this.events = events;
    this.library = library;
    this.played = PlayedKind.of(Corrections.standing(events), library);
    this.over = over();
  }

  /**
   * The note's parts.
   *
   * @param sheet the session's sheet
   * @param events all its events, oldest first
   * @param library the library of its procedure, which may be missing
   */
  public static List<SheetPart> of(Sheet sheet, List<Event> events, Library library, Dates dates) {
    return new RepairNote(sheet, events, library).parts(dates);
  }

  /** What is left to a repairer; of a session that its files no longer fit, only how it ended. */
  private Handover over() {
    boolean known =
        events.get(0) instanceof Event.Started started
            && library.procedures().containsKey(started.procedure());
    try {
      if (known) {
        return new Engine(library, new BeliefAdvisor()).handover(events);
      }
    } catch (RecordMismatchException e) {
      // What the record says by itself still stands.
    }
    Event.Ended ended = sheet.ended();
    List<Handover.Point> points =
        ended != null && (ended.handOver() || ended.why().contains(Step.End.REPAIRER))
            ? List.of(new Handover.Point(sheet.heading().procedure(), ended.outcome(), ended.why()))
            : List.of();
    return new Handover(points, List.of(), sheet.standing() == null ? "" : sheet.standing());
  }

  private List<SheetPart> parts(Dates dates) {
    List<SheetPart> parts = new ArrayList<>();
    Map<String, String> facts = new LinkedHashMap<>(SheetParts.facts(sheet, dates).facts());
    facts.keySet().removeAll(List.of("Work", "Began", SheetParts.BENCH));
    parts.add(new SheetPart("Instrument", List.of(new SheetPart.Facts(facts))));
    parts.add(SheetPart.points("What it comes for", comes()));
    List<String> wanted = Wanted.lines(sheet.rows(), played.kind());
    if (!wanted.isEmpty()) {
      parts.add(SheetPart.points("What is wanted, for the middle of each range", wanted));
    }
    parts.add(new SheetPart("What was read", read()));
    parts.add(SheetPart.points("What was tried", tried()));
    List<String> then = until();
    then.addAll(after());
    if (!then.isEmpty()) {
      parts.add(SheetPart.points("Until it is repaired, and then", then));
    }
    return parts;
  }

  private List<String> comes() {
    // One outcome is one job, though two stages may have come to it.
    Map<String, String> jobs = new LinkedHashMap<>();
    over.points().forEach(point -> jobs.putIfAbsent(outcome(point), point.text()));
    return jobs.isEmpty()
        ? List.of("This session leaves nothing to a repairer.")
        : jobs.entrySet().stream().map(job -> job.getKey() + ". " + job.getValue()).toList();
  }

  private static String outcome(Handover.Point point) {
    String words = InWindow.shown(point.outcome());
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private List<SheetPart.Block> read() {
    List<Sheet.Row> rows = rows();
    List<String> points = new ArrayList<>();
    Set<String> ways = new LinkedHashSet<>();
    rows.forEach(row -> ways.add(ReadingWords.name(row.quantity()) + ": " + row.convention()));
    if (!ways.isEmpty()) {
      points.add(String.join("; ", ways) + ".");
    }
    Set<Quantity> here = new HashSet<>();
    sheet.rows().forEach(row -> here.add(row.quantity()));
    Set<String> earlier = new LinkedHashSet<>();
    for (Stage stage : over.stages()) {
      Results.Result result = library.results().results().get(stage.id());
      if (result != null && !stage.reading().isEmpty() && here.add(result.quantity())) {
        earlier.add(stage.name() + " " + stage.reading() + " (" + stage.status().words() + ")");
      }
    }
    if (!earlier.isEmpty()) {
      points.add("On record before: " + String.join("; ", earlier) + ".");
    }
    Sheet.Played play = sheet.played();
    if (play != null) {
      points.add("Played as found: " + play.found() + "; as left: " + play.left() + ".");
    }
    return rows.isEmpty()
        ? List.of(new SheetPart.Points(List.of(NO_FINDING)), new SheetPart.Points(points))
        : List.of(
            new SheetPart.Grid(
                NO_FINDING + " The relief, and what is out of its range.",
                List.of("What", "String", "As found", "As left", "Range"),
                rows.stream().map(RepairNote::cells).toList()),
            new SheetPart.Points(points));
  }

  /**
   * The relief, and what is out of its range; where that is much, each quantity's outer strings
   * alone, since what is wanted tells of every string.
   */
  private List<Sheet.Row> rows() {
    Map<Quantity, List<Sheet.Row>> out = new EnumMap<>(Quantity.class);
    for (Sheet.Row row : sheet.rows()) {
      if (row.quantity() == Quantity.RELIEF || ReadingWords.out(row.left())) {
        out.computeIfAbsent(row.quantity(), quantity -> new ArrayList<>()).add(row);
      }
    }
    boolean much = out.values().stream().mapToInt(List::size).sum() > MOST_ROWS;
    return out.values().stream()
        .flatMap(
            all ->
                much && all.size() > 2
                    ? Stream.of(all.get(0), all.get(all.size() - 1))
                    : all.stream())
        .toList();
  }

  private static List<String> cells(Sheet.Row row) {
    return List.of(
        ReadingWords.name(row.quantity()) + ", " + row.quantity().unit(),
        row.string().isEmpty() ? "-" : row.string(),
        row.found() == null ? "not read" : ReadingWords.value(row.found().read()),
        ReadingWords.left(row.left()),
        row.window() == null ? "-" : ReadingWords.range(row.quantity(), row.window()));
  }

  private List<String> tried() {
    List<String> tried = new ArrayList<>();
    String turns = SheetWork.rod(sheet.rod());
    if (!sheet.rod().moves().isEmpty()) {
      turns += " Relief on the lowest string, and turns, oldest first: " + answers() + ".";
    }
    tried.add(turns);
    // How far each was set from where it was found, in all.
    Map<String, Map<String, Double>> sums = new LinkedHashMap<>();
    for (Event.Adjusted set : sheet.settings()) {
      sums.computeIfAbsent(set.change().replace('-', ' '), what -> new LinkedHashMap<>())
          .merge(set.string(), set.amount(), Double::sum);
    }
    sums.forEach(
        (what, strings) ->
            tried.add(
                "Set in all, "
                    + what
                    + ": "
                    + strings.entrySet().stream()
                        .map(one -> one.getKey() + " " + signed(one.getValue()))
                        .collect(Collectors.joining(", "))
                    + " mm; plus is up, or away from the nut."));
    Set<String> changes = new LinkedHashSet<>();
    for (Event event : Corrections.standing(events)) {
      Results.Change change = library.results().changes().get(String.valueOf(event.changes()));
      if (change != null && event instanceof Event.Told) {
        changes.add(change.name());
      }
    }
    if (!changes.isEmpty()) {
      tried.add("Besides: " + String.join("; ", changes) + ".");
    }
    return tried;
  }

  /** The turns and how the neck answered, on the string that decides. */
  private String answers() {
    return TrailLine.of(
        Summary.of(events).trail().stream()
            .filter(
                entry ->
                    !(entry instanceof Entry.Reading reading && reading.which() != Which.LOWEST))
            .toList());
  }

  private static String signed(double mm) {
    return (mm > 0 ? "+" : "") + Decimals.print(mm, 1);
  }

  private List<String> until() {
    List<String> until = new ArrayList<>();
    if (!over.standing().isEmpty()) {
      until.add("It stands like this: " + over.standing() + ".");
    }
    Set<String> stops = library.limits().findingNeeded();
    if (over.points().stream().anyMatch(point -> stops.contains(point.outcome()))) {
      until.add(
          "The rod is not turned in any session until a repairer's finding is on record. The next"
              + " start asks for it.");
    }
    return until;
  }

  /** The stages that are due: from the first that the repair or something before it spoils. */
  private List<String> after() {
    Set<String> repaired =
        over.points().stream().map(Handover.Point::procedure).collect(Collectors.toSet());
    List<String> spoiled = new ArrayList<>();
    Set<String> due = new LinkedHashSet<>();
    for (Stage stage : over.stages()) {
      if (stage.status() == Stage.Status.STALE && stage.by() != null) {
        spoiled.add(stage.name().toLowerCase(Locale.ROOT));
      }
      boolean first = !stage.status().usable() || repaired.contains(stage.by());
      if (stage.by() != null && (first || !due.isEmpty())) {
        due.add(stage.by());
      }
    }
    List<String> after = new ArrayList<>();
    if (!spoiled.isEmpty()) {
      after.add("Already stale: " + String.join(", ", spoiled) + ".");
    }
    if (!due.isEmpty()) {
      after.add("After the repair start, in this order: " + String.join(", ", due) + ".");
    }
    return after;
  }
}
