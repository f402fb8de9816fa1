package quarterturn.screen.page;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.kind.Quantity;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Prompt;

/**
 * Draws the side column of a wide terminal: the reason for the step, and relief and turns so far,
 * save beside the reading of something else.
 */
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
    boolean more = why.size() > most;
    int shown = more ? most - 1 : why.size();
    Line.draw(canvas, 0, 1, why, 0, shown);
    if (more) {
      shown++;
      canvas.put(0, shown, "… F2 shows the rest", Ink.STRONG);
    }
    if (model.prompt() instanceof Prompt.Measure measure && measure.quantity() != Quantity.RELIEF) {
      return canvas;
    }
    List<Line> trail = Trail.lines(model.overview(), zone, width);
    canvas.put(0, 1 + shown, "Relief and turns", Ink.STRONG);
    int room = rows - shown - 3;
    int from = Math.max(0, trail.size() - room);
    Line.draw(canvas, 0, 2 + shown, trail, from, room);
    return canvas;
  }
}
