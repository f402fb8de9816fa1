package quarterturn.screen.page;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;

/** Draws the side column of a wide terminal: the reason for the step, and all events so far. */
final class Side {
  private Side() {}

  static Canvas draw(Model model, ZoneId zone, int width, int rows) {
    Canvas canvas = new Canvas(width, rows);
    List<Line> why = new ArrayList<>();
    String reason = model.prompt().said().why();
    if (reason != null) {
      why.add(Line.heading("Why"));
      why.addAll(Line.wrapped(reason, width));
      why.add(Line.BLANK);
    }
    int most = Math.max(0, rows / 2 - 1);
    int shown = Math.min(why.size(), most);
    Line.draw(canvas, 0, 1, why, 0, shown);
    if (shown < why.size()) {
      canvas.put(0, shown, "… w shows the rest", Ink.STRONG);
      shown++;
    }
    List<Line> trail = Trail.lines(model.overview(), zone, width);
    canvas.put(0, 1 + shown, "Readings and turns", Ink.STRONG);
    int room = rows - shown - 3;
    int from = Math.max(0, trail.size() - room);
    Line.draw(canvas, 0, 2 + shown, trail, from, room);
    return canvas;
  }
}
