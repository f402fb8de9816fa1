package quarterturn.screen;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import quarterturn.lesson.Level;
import quarterturn.lesson.teacher.DeskLists;
import quarterturn.lesson.teacher.DeskView;
import quarterturn.lesson.teacher.DeskWords;
import quarterturn.screen.page.Line;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Question;

/** The lines of the view that is open over the benches. */
final class DeskLayers {
  private DeskLayers() {}

  static List<Line> lines(DeskModel model, int width) {
    List<Line> out = new ArrayList<>();
    DeskView.Row row = model.row();
    Question asked = model.asked();
    if (asked != null) {
      say(out, asked.lines(), width);
      out.add(Line.BLANK);
      String asks = asked instanceof Question.Asked words ? words.asks() : asked.help();
      out.addAll(Line.wrapped("", Ink.PLAIN, asks, Ink.STRONG, width));
      return out;
    }
    switch (model.layer()) {
      case KEYS -> keys(out);
      case SPREAD -> spread(out, model, width);
      case ORDERS -> orders(out, model, width);
      case BENCH, LEVEL -> {
        if (row == null) {
          out.addAll(Line.wrapped("There is no such bench any more.", width));
        } else if (model.layer() == DeskLayer.LEVEL) {
          levels(out, model, row, width);
        } else {
          say(out, DeskLists.bench(model.sight(), row), width);
        }
      }
      case NONE -> {}
    }
    return out;
  }

  private static void say(List<Line> out, List<String> paragraphs, int width) {
    paragraphs.forEach(text -> out.addAll(Line.wrapped(text, width)));
  }

  private static void levels(List<Line> out, DeskModel model, DeskView.Row row, int width) {
    List<String> words = DeskWords.levels(row.bench());
    int pick = model.students().indexOf(model.student());
    for (int i = 0; i < words.size(); i++) {
      Ink ink = i == pick ? Ink.NOW : Ink.PLAIN;
      out.addAll(Line.wrapped(i == pick ? "►" : "·", Ink.STRONG, words.get(i), ink, width));
    }
    out.add(Line.BLANK);
    for (Level level : Level.values()) {
      out.addAll(Line.wrapped(level.ordinal() + 1 + "  " + level.words(), width));
    }
    out.addAll(Line.wrapped("f  keeps a level from rising and falling, or lets it again", width));
    out.add(Line.BLANK);
    out.addAll(Line.wrapped("Hazards are shown at every level.", width));
  }

  static void spread(List<Line> out, DeskModel model, int width) {
    say(out, DeskLists.spread(model.sight()), width);
  }

  static void orders(List<Line> out, DeskModel model, int width) {
    List<String> newest = new ArrayList<>(DeskLists.orders(model.sight()));
    Collections.reverse(newest);
    newest.forEach(order -> out.addAll(Line.wrapped("·", Ink.PLAIN, order, Ink.PLAIN, width)));
  }

  private static void keys(List<Line> out) {
    String[][] keys = {
      {"↑ ↓ 1-9", "mark a bench"},
      {"Enter", "all about the marked bench"},
      {"r", "let it go on; where a value is read back, type it"},
      {"h", "hold it, with a reason"},
      {"a g", "hold every bench; let go on whatever desks hold"},
      {"l", "levels of its students"},
      {"m", "what its students missed, and what of it comes back"},
      {"s", "predictions and readings, by string"},
      {"o", "orders, and what the benches said"},
      {"w", "write the sheets as things stand"},
      {"e", "end the lesson; asks first"},
      {"Esc", "one view back; never leaves"},
      {"q or F10", "leave the desk; the lesson goes on"},
    };
    for (String[] key : keys) {
      out.add(new Line(key[0], Ink.STRONG, 10, key[1], Ink.PLAIN));
    }
  }
}
