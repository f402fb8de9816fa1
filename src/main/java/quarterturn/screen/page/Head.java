package quarterturn.screen.page;

import java.util.List;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Overview;

/** Draws the top rows: instrument, stage, role, and the present part of the procedure. */
public final class Head {
  public static final int ROWS = 3;

  private static final String DONE = "√";
  private static final String NOW = "►";
  private static final String LATER = "·";

  private Head() {}

  public static void draw(Canvas canvas, Overview overview) {
    int room = canvas.width() - 4;
    String whole = overview.stage() + "  ·  " + overview.role().word();
    String right =
        Canvas.cells(whole) <= room / 2 ? whole : Wrap.cut(overview.stage(), room * 2 / 3);
    String left = Wrap.cut(overview.instrument(), room - Canvas.cells(right) - 2);
    canvas.put(2, 0, left, Ink.STRONG);
    canvas.put(canvas.width() - 2 - Canvas.cells(right), 0, right);
    if (!overview.parts().isEmpty()) {
      parts(canvas, overview, room);
    }
    canvas.row(0, 2, canvas.width(), '─', Ink.PLAIN);
  }

  /** Draws the present part's name and as many of its neighbours' as fit. */
  private static void parts(Canvas canvas, Overview overview, int room) {
    List<String> parts = overview.parts();
    int now = overview.part();
    String count = (now + 1) + " of " + parts.size();
    int from = now;
    int to = now + 1;
    int used = Canvas.cells(count) + 2 + cells(parts.get(now)) + 4;
    boolean grown = true;
    while (grown) {
      grown = false;
      if (to < parts.size() && used + cells(parts.get(to)) <= room - 4) {
        used += cells(parts.get(to++));
        grown = true;
      }
      if (from > 0 && used + cells(parts.get(from - 1)) <= room - 4) {
        used += cells(parts.get(--from));
        grown = true;
      }
    }
    int at = canvas.put(2, 1, from > 0 ? "… " : "");
    for (int i = from; i < to; i++) {
      if (i > from) {
        at = canvas.put(at, 1, "  ");
      }
      at = part(canvas, at, parts.get(i), i == now, overview.done().contains(i));
    }
    canvas.put(at, 1, to < parts.size() ? " …" : "");
    canvas.put(canvas.width() - 2 - Canvas.cells(count), 1, count);
  }

  private static int part(Canvas canvas, int at, String part, boolean now, boolean done) {
    if (now) {
      return canvas.put(at, 1, " " + NOW + " " + part + " ", Ink.NOW);
    }
    return canvas.put(at, 1, (done ? DONE : LATER) + " " + part);
  }

  private static int cells(String part) {
    return Canvas.cells(part) + 4;
  }
}
