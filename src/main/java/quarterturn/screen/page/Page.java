package quarterturn.screen.page;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Hazard;
import quarterturn.screen.state.Layer;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;

/** Draws the whole view of a session, from the model and the size alone. */
public final class Page {
  /** Narrowest width that has a side column. */
  public static final int WIDE = 116;

  private static final int SIDE = 40;

  private Page() {}

  public static Canvas draw(Model model, ZoneId zone, int width, int height) {
    if (TooSmall.is(width, height)) {
      return TooSmall.draw(width, height);
    }
    Canvas canvas = new Canvas(width, height);
    Head.draw(canvas, model.overview());
    int rows = height - Head.ROWS - Foot.rows(height);
    int main = mainWidth(width);
    Body body = new Body(model, zone, main, rows);
    Foot.draw(canvas, model, body.hidesPicture());
    canvas.paste(0, Head.ROWS, main(model, zone, body, main, rows));
    if (main < width) {
      for (int r = 0; r < rows; r++) {
        canvas.set(main, Head.ROWS + r, '│');
      }
      canvas.set(main, Head.ROWS - 1, '┬');
      canvas.set(main, Head.ROWS + rows, '┴');
      canvas.paste(main + 2, Head.ROWS, Side.draw(model, zone, SIDE, rows));
    }
    return canvas;
  }

  /** The model with the line on top that is on top at this size. */
  public static Model settled(Model model, ZoneId zone, int width, int height) {
    if (TooSmall.is(width, height)) {
      return model;
    }
    int rows = height - Head.ROWS - Foot.rows(height);
    int main = mainWidth(width);
    if (model.layer() != Layer.NONE) {
      int most = Layers.mostScroll(lines(model, zone, main), rows);
      int top = Math.min(model.scroll(), most);
      return model.scrolledTo(top, Layers.inView(rows), top < most);
    }
    Body body = new Body(model, zone, main, rows);
    return model.scrolledTo(body.scroll(), body.inView(), body.more());
  }

  private static int mainWidth(int width) {
    return width >= WIDE ? width - SIDE - 3 : width;
  }

  private static Canvas main(Model model, ZoneId zone, Body body, int width, int rows) {
    return switch (model.layer()) {
      case NONE -> body.draw();
      case PICTURE -> Layers.picture(model, width, rows);
      case KEYS, WHY, LOG, OVERVIEW, LEAVE ->
          Layers.draw(title(model.layer()), lines(model, zone, width), model, width, rows);
    };
  }

  private static String title(Layer layer) {
    return switch (layer) {
      case KEYS -> "Keys and words";
      case WHY -> "Why";
      case LOG -> "All readings and turns";
      case OVERVIEW -> "What is fresh, and what is stale";
      default -> "Leave now?";
    };
  }

  private static List<Line> lines(Model model, ZoneId zone, int width) {
    int inner = Math.min(width - 4, 90);
    return switch (model.layer()) {
      case KEYS -> KeysView.lines(model, inner);
      case WHY -> why(model, inner);
      case LOG -> Trail.lines(model.overview(), zone, inner);
      case OVERVIEW -> StageLines.of(model.overview().stages(), zone, inner);
      case LEAVE -> leave(model, inner);
      default -> List.of();
    };
  }

  private static List<Line> why(Model model, int width) {
    String why = model.prompt().said().why();
    List<Line> out = new ArrayList<>();
    out.addAll(Line.wrapped(why == null ? "This step gives no reason." : why, width));
    for (Hazard hazard : Warning.worstFirst(model.prompt().said().hazards())) {
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

  private static String kept(Model model) {
    return model.overview().kept()
        ? "Every answer is saved. You can take the session up again later."
        : "This is a rehearsal: nothing of it is saved.";
  }

  private static List<Line> leave(Model model, int width) {
    List<Line> out = new ArrayList<>();
    List<String> parting = model.overview().parting();
    if (!parting.isEmpty()) {
      out.add(Line.heading("Before you leave:"));
      parting.forEach(one -> out.addAll(Line.wrapped("►", Ink.STRONG, one, Ink.PLAIN, width)));
      out.add(Line.BLANK);
    }
    out.addAll(Line.wrapped("The instrument would be left like this:", width));
    out.addAll(Line.wrapped("►", Ink.STRONG, model.standing(), Ink.STRONG, width));
    out.add(Line.BLANK);
    out.addAll(Line.wrapped(kept(model), width));
    out.add(Line.BLANK);
    out.addAll(Line.wrapped("y leaves. Esc or n stays.", width));
    return out;
  }
}
