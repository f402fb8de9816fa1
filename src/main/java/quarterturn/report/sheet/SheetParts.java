package quarterturn.report.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.InWindow;
import quarterturn.procedure.kind.Quantity;
import quarterturn.report.EventWords;
import quarterturn.session.Event;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;
import quarterturn.unit.Printable;

/** The parts of a sheet in words, for the formats that people read. */
final class SheetParts {
  private static final String TITLE = "Set-up sheet";

  /** Title of the part that the drawing of the relief belongs to. */
  static final String MEASURES = "As found and as left";

  private final Sheet sheet;
  private final Dates dates;
  private final List<SheetPart> parts = new ArrayList<>();

  private SheetParts(Sheet sheet, Dates dates) {
    this.sheet = sheet;
    this.dates = dates;
  }

  /** The title of a sheet, which says where it tells of a rehearsal. */
  static String title(Sheet sheet) {
    return sheet.rehearsed() ? TITLE + " of a rehearsal on a simulated neck" : TITLE;
  }

  static List<SheetPart> of(Sheet sheet, Dates dates) {
    SheetParts all = new SheetParts(sheet, dates);
    all.add("Instrument", all.heading());
    all.add(MEASURES, all.measures());
    all.add("What was done", SheetWork.of(sheet, dates));
    all.add("Outcome", all.outcome());
    all.add("Still open", points(sheet.open(), all.nothing()));
    all.add("Care", points(sheet.care(), ""));
    all.add("When to look again", all.next());
    all.add("Every reading", SheetReadings.of(sheet, dates));
    all.add("Looked at", all.findings());
    all.add("Hazards accepted", points(all.hazards(), ""));
    all.add("Limits of this sheet", points(Sheet.LIMITS, ""));
    return all.parts;
  }

  private void add(String title, List<SheetPart.Block> blocks) {
    if (!blocks.isEmpty()) {
      parts.add(new SheetPart(title, blocks));
    }
  }

  private static List<SheetPart.Block> points(List<String> points, String none) {
    if (points.isEmpty()) {
      return none.isEmpty() ? List.of() : List.of(new SheetPart.Points(List.of(none)));
    }
    return List.of(new SheetPart.Points(points));
  }

  private String when(@Nullable Instant at, String none) {
    return at == null ? none : dates.minute(at);
  }

  /** The instrument, who worked when, and what was said of it. */
  static SheetPart.Facts facts(Sheet sheet, Dates dates) {
    return new SheetParts(sheet, dates).facts();
  }

  private SheetPart.Facts facts() {
    Sheet.Heading heading = sheet.heading();
    Map<String, String> facts = new LinkedHashMap<>();
    put(facts, "Instrument", heading.instrument());
    put(facts, "Kind", heading.kind());
    put(facts, "Player", heading.style() == null ? null : heading.style().word() + " hand");
    String role = heading.role() == null ? "not known" : heading.role().word();
    facts.put("Done by", heading.by() == null ? role : heading.by() + ", " + role);
    put(facts, "Ticket", heading.ticket());
    facts.put("Work", heading.procedure());
    facts.put("Began", when(heading.began(), "not known"));
    facts.put("Ended", when(heading.ended(), "still open"));
    put(facts, "Bench time", bench(heading));
    put(facts, "Session", sheet.rehearsed() ? null : heading.session());
    put(facts, "Complaint", sheet.complaint());
    put(facts, "Strings", strings());
    put(facts, "Air", air());
    return new SheetPart.Facts(facts);
  }

  private static @Nullable String bench(Sheet.Heading heading) {
    Long minutes = heading.minutes();
    return minutes == null
        ? null
        : Dates.lasting(Duration.ofMinutes(minutes))
            + ", from the first answer to the last, without waits and breaks";
  }

  /** A fact where it is known; what nobody said takes no line. */
  private static void put(Map<String, String> facts, String label, @Nullable String fact) {
    String shown = fact == null ? "" : Printable.of(fact);
    if (fact != null && !shown.isBlank() && !shown.strip().equals("-")) {
      facts.put(label, fact);
    }
  }

  /** What stands where nothing is open; where the work is not signed off, its outcome says more. */
  private String nothing() {
    return sheet.care().isEmpty() ? "Nothing beside what the outcome says." : "Nothing.";
  }

  private List<SheetPart.Block> heading() {
    List<SheetPart.Block> blocks = new ArrayList<>();
    blocks.add(facts());
    if (!sheet.notes().isEmpty()) {
      blocks.add(new SheetPart.Points(remarks("Noted, ", sheet.notes())));
    }
    return blocks;
  }

  private String strings() {
    return String.join("; ", remarks("", sheet.strings()));
  }

  private static List<String> remarks(String before, List<Sheet.Remark> remarks) {
    return remarks.stream()
        .map(r -> r.about().isEmpty() ? r.text() : before + asked(r.about()) + r.text())
        .toList();
  }

  private static String asked(String about) {
    return about + (about.endsWith("?") ? " " : ": ");
  }

  private String air() {
    List<String> air = new ArrayList<>();
    for (Sheet.Taken taken : sheet.readings()) {
      Event.Read read = taken.read();
      if (!read.quantity().onString() && !read.missing()) {
        air.add(
            read.quantity().said() + " " + EventWords.value(read) + ", " + dates.minute(read.at()));
      }
    }
    return String.join("; ", air);
  }

  private List<SheetPart.Block> measures() {
    List<SheetPart.Block> blocks = new ArrayList<>();
    Map<String, List<Sheet.Row>> groups = new LinkedHashMap<>();
    for (Sheet.Row row : sheet.rows()) {
      groups.computeIfAbsent(row.quantity() + row.convention(), key -> new ArrayList<>()).add(row);
    }
    groups.values().forEach(rows -> blocks.add(measured(rows)));
    if (blocks.isEmpty()) {
      blocks.addAll(points(List.of(), "Nothing was read on the strings."));
    }
    Sheet.Played played = sheet.played();
    if (played != null) {
      blocks.add(
          new SheetPart.Grid(
              "Where it buzzes or chokes when it is played.",
              List.of("As found", "As left"),
              List.of(List.of(played.found(), played.left()))));
    }
    return blocks;
  }

  private static SheetPart.Grid measured(List<Sheet.Row> rows) {
    Quantity quantity = rows.get(0).quantity();
    Set<String> sources = new TreeSet<>();
    List<List<String>> cells = new ArrayList<>();
    for (Sheet.Row row : rows) {
      if (row.source() != null) {
        sources.add(row.source());
      }
      Sheet.Taken found = row.found();
      Sheet.Taken left = row.left();
      cells.add(
          List.of(
              row.string().isEmpty() ? "-" : row.string(),
              found == null ? "not read" : ReadingWords.value(found.read()),
              found == null ? "-" : ReadingWords.stands(found),
              ReadingWords.left(left),
              left.spoiled() == null ? ReadingWords.stands(left) : "-",
              row.window() == null ? "-" : ReadingWords.range(quantity, row.window())));
    }
    double step = rows.get(0).left().read().gaugeStep();
    String gauge =
        step > 0
            ? " Read in steps of " + Decimals.plain(step) + " " + unit(quantity, step) + "."
            : "";
    String from = sources.isEmpty() ? "" : " Range: " + String.join("; ", sources) + ".";
    return new SheetPart.Grid(
        ReadingWords.name(quantity)
            + ", in "
            + quantity.unit()
            + ": "
            + rows.get(0).convention()
            + "."
            + gauge
            + from,
        List.of("String", "As found", "Stands", "As left", "Stands", "Range"),
        cells);
  }

  private static String unit(Quantity quantity, double number) {
    return number == 1 ? quantity.unit().replace("cents", "cent") : quantity.unit();
  }

  private List<SheetPart.Block> outcome() {
    Event.Ended ended = sheet.ended();
    if (ended == null) {
      String standing = sheet.standing();
      return points(
          List.of(
              (sheet.discarded() ? "Discarded" : "Still open")
                  + (standing == null ? "." : ": " + standing + ".")),
          "");
    }
    String how = ended.handOver() ? "Handed over to a repairer: " : "Ended: ";
    List<String> lines = new ArrayList<>(List.of(how + InWindow.shown(ended.outcome()) + "."));
    // The reason stands once: among what is open, where there is something to do about it.
    if (!SheetOpen.forRepairer(ended)) {
      ended.why().lines().map(String::strip).filter(l -> !l.isEmpty()).forEach(lines::add);
    }
    // An end that speaks of care does so at the bench; here care has a part of its own.
    int most = sheet.care().isEmpty() ? lines.size() : Math.min(2, lines.size());
    return points(lines.subList(0, most), "");
  }

  private List<SheetPart.Block> next() {
    List<String> again =
        sheet.next().stream()
            .map(n -> dates.minute(n.at()).substring(0, 10) + ", " + n.what() + ".")
            .toList();
    return points(
        again, sheet.ended() == null ? "Once the work is finished." : "As the repairer says.");
  }

  private List<SheetPart.Block> findings() {
    if (sheet.findings().isEmpty()) {
      return List.of();
    }
    return List.of(
        new SheetPart.Grid(
            "What was asked, and the answer.",
            List.of("Asked", "Answer"),
            sheet.findings().stream().map(f -> List.of(f.about(), f.text())).toList()));
  }

  private List<String> hazards() {
    return sheet.hazards().stream().map(Sheet.Remark::text).toList();
  }
}
