package quarterturn.report.sheet;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import quarterturn.report.AdjustedWords;
import quarterturn.report.TurnWords;
import quarterturn.unit.Counted;
import quarterturn.unit.Dates;

/** The part of a sheet on what was done: turns of the rod, saddles and pickups, waits. */
record SheetWork(Sheet sheet, Dates dates) {
  /** A cell with nothing in it. */
  private static final String NONE = "-";

  static List<SheetPart.Block> of(Sheet sheet, Dates dates) {
    return new SheetWork(sheet, dates).blocks();
  }

  private List<SheetPart.Block> blocks() {
    List<SheetPart.Block> blocks = new ArrayList<>();
    Sheet.Rod rod = sheet.rod();
    String sum = rod(rod);
    if (rod.moves().isEmpty()) {
      blocks.add(new SheetPart.Points(List.of(sum)));
    } else {
      blocks.add(
          new SheetPart.Grid(
              sum,
              List.of("When", "Rod", "How it felt"),
              rod.moves().stream().map(this::move).toList()));
    }
    if (!sheet.settings().isEmpty()) {
      blocks.add(
          new SheetPart.Grid(
              "Saddles and pickups.",
              List.of("When", "What"),
              sheet.settings().stream()
                  .map(s -> List.of(dates.minute(s.at()), AdjustedWords.of(s)))
                  .toList()));
    }
    if (!sheet.waits().isEmpty()) {
      blocks.add(
          new SheetPart.Grid(
              "Waits.",
              List.of("From", "In", "Was to last", "How it ended"),
              sheet.waits().stream().map(this::wait).toList()));
    }
    return blocks;
  }

  /** How far the rod was turned, in a sentence. */
  static String rod(Sheet.Rod rod) {
    long turns = rod.moves().stream().filter(m -> m.turn().turns() != 0).count();
    return turns == 0
        ? "The rod was not turned."
        : "The rod stands "
            + TurnWords.net(rod.net(), rod.moves().stream().allMatch(Sheet.Move::sure))
            + "; "
            + rod.total()
            + " in all, in "
            + Counted.of(turns, "move")
            + ".";
  }

  private List<String> move(Sheet.Move move) {
    String felt = move.feel() == null ? "not known" : move.feel().label();
    return List.of(dates.minute(move.at()), TurnWords.done(move.turn(), move.sure()), felt);
  }

  private List<String> wait(Sheet.Pause wait) {
    String how =
        wait.ended() == null
            ? "not over"
            : wait.reason() == null
                ? "waited out"
                : (wait.needed() ? "skipped: " : "not needed: ") + wait.reason();
    return List.of(
        dates.minute(wait.began()),
        wait.taken().words(),
        wait.needed() ? Dates.lasting(Duration.between(wait.began(), wait.until())) : NONE,
        how);
  }
}
