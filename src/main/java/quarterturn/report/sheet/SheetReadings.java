package quarterturn.report.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import quarterturn.session.Event;
import quarterturn.unit.Dates;

/** Every reading on the strings with the step it was read in, by the titles of stage and part. */
final class SheetReadings {
  private SheetReadings() {}

  /** A table, one row for the readings of one quantity that were taken in one go; or nothing. */
  static List<SheetPart.Block> of(Sheet sheet, Dates dates) {
    List<List<Sheet.Taken>> rounds = new ArrayList<>();
    Set<String> strings = new HashSet<>();
    for (Sheet.Taken taken : sheet.readings()) {
      if (taken.read().quantity().onString()) {
        Sheet.Taken before = rounds.isEmpty() ? null : rounds.get(rounds.size() - 1).get(0);
        boolean other = !strings.add(SheetRows.string(taken.read()));
        if (before == null || other || !together(before, taken)) {
          rounds.add(new ArrayList<>());
          strings.clear();
          strings.add(SheetRows.string(taken.read()));
        }
        rounds.get(rounds.size() - 1).add(taken);
      }
    }
    return rounds.isEmpty()
        ? List.of()
        : List.of(
            new SheetPart.Grid(
                "In the order of time, with the step each was read in.",
                List.of("When", "Read in", "What", "Readings", "Now"),
                rounds.stream().map(round -> row(round, dates)).toList()));
  }

  private static boolean together(Sheet.Taken one, Sheet.Taken next) {
    return one.read().quantity() == next.read().quantity()
        && one.taken().equals(next.taken())
        && (one.spoiled() == null) == (next.spoiled() == null);
  }

  private static List<String> row(List<Sheet.Taken> round, Dates dates) {
    Sheet.Taken first = round.get(0);
    return List.of(
        dates.minute(first.read().at()),
        first.taken().words(),
        ReadingWords.name(first.read().quantity()) + ", " + first.read().quantity().unit(),
        round.stream().map(SheetReadings::value).collect(Collectors.joining("; ")),
        first.spoiled() == null ? "fresh" : "stale");
  }

  private static String value(Sheet.Taken taken) {
    Event.Read read = taken.read();
    String value = read.missing() ? "could not be read" : ReadingWords.value(read);
    return (SheetRows.string(read) + " " + value.replace(" (no gap)", "")).strip();
  }
}
