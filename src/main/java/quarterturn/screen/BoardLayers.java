package quarterturn.screen;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import quarterturn.lesson.Keep;
import quarterturn.lesson.Level;
import quarterturn.lesson.StepSpread;
import quarterturn.lesson.Value;
import quarterturn.lesson.teacher.BoardView;
import quarterturn.lesson.teacher.Called;
import quarterturn.lesson.teacher.ReadBack;
import quarterturn.report.Dates;
import quarterturn.report.lesson.BoardWords;
import quarterturn.screen.page.Line;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.unit.Printable;

/** The lines of what stands over the benches. */
final class BoardLayers {
  private BoardLayers() {}

  static List<Line> lines(BoardModel model, Dates dates, int width) {
    List<Line> out = new ArrayList<>();
    BoardView.Row row = model.row();
    switch (model.layer()) {
      case KEYS -> keys(out);
      case SPREAD -> spreads(out, model, width);
      case ORDERS -> orders(out, model, width);
      case HOLD_ALL ->
          say(out, "Every bench waits until you let it go on. Say why, in a few words.", width);
      case END -> end(out, model, width);
      case BENCH, RELEASE, HOLD, LEVEL -> {
        if (row == null) {
          say(out, "There is no such bench any more.", width);
        } else {
          bench(out, model, row, dates, width);
        }
      }
      case NONE -> {}
    }
    return out;
  }

  private static void say(List<Line> out, String words, int width) {
    out.addAll(Line.wrapped(words, width));
  }

  private static void bench(
      List<Line> out, BoardModel model, BoardView.Row row, Dates dates, int width) {
    if (model.layer() == BoardLayer.RELEASE) {
      release(out, model, row, width);
    } else if (model.layer() == BoardLayer.HOLD) {
      say(out, "The bench waits until you let it go on. Say why, in a few words.", width);
    } else if (model.layer() == BoardLayer.LEVEL) {
      levels(out, model, row, width);
    } else {
      out.addAll(Line.wrapped("", Ink.PLAIN, BoardWords.standsFor(row), BoardPage.ink(row), width));
      out.add(Line.BLANK);
      say(out, "At: " + BoardWords.where(row.bench()), width);
      say(out, "There: " + BoardWords.who(row.bench()), width);
      say(out, "Last: " + BoardWords.heard(model.sight(), row, dates), width);
      out.add(Line.BLANK);
      for (Keep keep : row.releases()) {
        boolean given = model.sight().pending(row, keep) != null;
        say(out, "Kept by: " + what(keep) + (given ? " (released, not seen yet)" : ""), width);
      }
      BoardWords.levels(row.bench()).forEach(level -> say(out, level, width));
    }
  }

  private static String what(Keep keep) {
    String what = Printable.of(keep.what()).replaceFirst("\\.$", "");
    return switch (keep.kind()) {
      case STOP -> "a stop" + (what.isEmpty() ? ", no reason given" : ": " + what);
      case TEACHER -> "the teacher: " + what;
      case HOLD_POINT -> "a hold point: " + what;
    };
  }

  private static void release(List<Line> out, BoardModel model, BoardView.Row row, int width) {
    List<Keep> open = model.sight().toRelease(row);
    if (open.isEmpty()) {
      say(out, "Nothing keeps this bench now.", width);
      return;
    }
    Keep keep = open.get(0);
    say(out, "Kept by " + what(keep) + ".", width);
    out.add(Line.BLANK);
    if (keep.value() instanceof Value.None) {
      say(out, "Look at the bench. When it may go on, press Enter.", width);
    } else {
      say(
          out,
          "Have the bench read it to you: "
              + ReadBack.kind(keep.value())
              + ". Type what you hear, for example "
              + ReadBack.example(keep.value())
              + ".",
          width);
    }
    if (open.size() > 1) {
      say(out, "After it, " + (open.size() - 1) + " more will keep it.", width);
    }
  }

  private static void levels(List<Line> out, BoardModel model, BoardView.Row row, int width) {
    List<String> words = BoardWords.levels(row.bench());
    int pick = model.students().indexOf(model.student());
    for (int i = 0; i < words.size(); i++) {
      Ink ink = i == pick ? Ink.NOW : Ink.PLAIN;
      out.addAll(Line.wrapped(i == pick ? "►" : "·", Ink.STRONG, words.get(i), ink, width));
    }
    out.add(Line.BLANK);
    for (Level level : Level.values()) {
      say(out, level.ordinal() + 1 + "  " + level.words(), width);
    }
    say(out, "f  keeps a level from rising and falling, or lets it again", width);
    out.add(Line.BLANK);
    say(out, "Hazards are shown at every level.", width);
  }

  private static void end(List<Line> out, BoardModel model, int width) {
    say(out, "The lesson ends at every bench, and no board can take it back.", width);
    say(out, "Each bench leaves its instrument in order; then the sheets are written.", width);
    out.add(Line.BLANK);
    for (BoardView.Row row : model.sight().view().rows()) {
      say(out, Called.name(row) + ": " + BoardWords.standsFor(row), width);
    }
    out.add(Line.BLANK);
    say(out, "y ends it. Esc or n lets it go on.", width);
  }

  private static void spreads(List<Line> out, BoardModel model, int width) {
    if (model.sight().view().spreads().isEmpty()) {
      say(out, "Nothing was predicted or read yet.", width);
    }
    for (StepSpread spread : model.sight().view().spreads()) {
      spread(out, spread, width);
      out.add(Line.BLANK);
    }
  }

  static void spread(List<Line> out, StepSpread spread, int width) {
    out.addAll(Line.wrapped("·", Ink.PLAIN, Printable.of(spread.step()), Ink.STRONG, width));
    for (String words : BoardWords.spread(spread)) {
      for (String line : Wrap.lines(words, width - 2)) {
        out.add(new Line("", Ink.PLAIN, 2, line, Ink.PLAIN));
      }
    }
  }

  static void orders(List<Line> out, BoardModel model, int width) {
    List<BoardView.Given> newest = new ArrayList<>(model.sight().view().given());
    Collections.reverse(newest);
    if (newest.isEmpty()) {
      say(out, "No order was given yet.", width);
    }
    for (BoardView.Given given : newest) {
      String order = BoardWords.order(model.sight(), given);
      out.addAll(Line.wrapped("·", Ink.PLAIN, order, Ink.PLAIN, width));
      for (String line : Wrap.lines(BoardWords.answers(model.sight(), given), width - 4)) {
        out.add(new Line("", Ink.PLAIN, 4, line, Ink.STRONG));
      }
    }
  }

  private static void keys(List<Line> out) {
    String[][] keys = {
      {"↑ ↓ 1-9", "mark a bench"},
      {"Enter", "all about the marked bench"},
      {"r", "let it go on; where a value is read back, type it"},
      {"h", "hold it, with a reason"},
      {"a", "hold every bench"},
      {"g", "let go on whatever boards hold"},
      {"l", "levels of its students"},
      {"s", "predictions and readings of each step"},
      {"o", "orders, and what the benches said"},
      {"w", "write the sheets as things stand"},
      {"e", "end the lesson; asks first"},
      {"Esc", "one view back; never leaves"},
      {"q or F10", "leave the board; the lesson goes on"},
    };
    for (String[] key : keys) {
      out.add(new Line(key[0], Ink.STRONG, 10, key[1], Ink.PLAIN));
    }
  }
}
