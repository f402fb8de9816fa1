package quarterturn.screen;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Hazard;

/** The whole view of a session. A pure function of what is shown and of the size. */
final class Page {
  /** From this width on there is a side column. */
  static final int WIDE = 116;

  private static final int SIDE = 40;

  private Page() {}

  static Canvas draw(Model model, ZoneId zone, int width, int height) {
    if (TooSmall.is(width, height)) {
      return TooSmall.draw(width, height);
    }
    Canvas canvas = new Canvas(width, height);
    Head.draw(canvas, model.overview());
    Foot.draw(canvas, model);
    int rows = height - Head.ROWS - Foot.ROWS;
    boolean wide = width >= WIDE;
    int main = wide ? width - SIDE - 3 : width;
    canvas.paste(0, Head.ROWS, body(model, zone, main, rows));
    if (wide) {
      for (int r = 0; r < rows; r++) {
        canvas.set(main, Head.ROWS + r, '│');
      }
      canvas.set(main, Head.ROWS - 1, '┬');
      canvas.set(main, height - Foot.ROWS, '┴');
      canvas.paste(main + 2, Head.ROWS, Side.draw(model, zone, SIDE, rows));
    }
    return canvas;
  }

  private static Canvas body(Model model, ZoneId zone, int width, int rows) {
    int inner = width - 4;
    return switch (model.layer()) {
      case NONE -> Body.draw(model, zone, width, rows);
      case KEYS -> KeysView.draw(model, width, rows);
      case WHY -> Layers.draw("Why", why(model, Math.min(inner, 90)), model, width, rows);
      case LOG ->
          Layers.draw(
              "All readings and turns",
              Trail.lines(model.overview(), zone, inner),
              model,
              width,
              rows);
      case LEAVE -> Layers.draw("Leave now?", leave(model, inner), model, width, rows);
      case PICTURE -> Layers.picture(model, width, rows);
    };
  }

  private static List<Line> why(Model model, int width) {
    String why = model.prompt().said().why();
    List<Line> out = new ArrayList<>();
    out.addAll(Line.wrapped(why == null ? "This step gives no reason." : why, width));
    for (Hazard hazard : model.prompt().said().hazards()) {
      out.add(Line.BLANK);
      out.addAll(Warning.plain(hazard, width));
    }
    String source = model.overview().source();
    if (source != null) {
      out.add(Line.BLANK);
      out.addAll(Line.wrapped(Trail.window(model.overview()) + ": " + source + ".", width));
    }
    return out;
  }

  private static List<Line> leave(Model model, int width) {
    List<Line> out = new ArrayList<>();
    out.addAll(Line.wrapped("The instrument would be left like this:", width));
    out.addAll(Line.wrapped("►", Ink.STRONG, model.standing(), Ink.STRONG, width));
    out.add(Line.BLANK);
    out.addAll(
        Line.wrapped("Every answer is saved. You can take the session up again later.", width));
    out.add(Line.BLANK);
    out.addAll(Line.wrapped("y leaves. Esc or n stays.", width));
    return out;
  }
}
