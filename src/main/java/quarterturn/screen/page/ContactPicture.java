package quarterturn.screen.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.ContactMap;
import quarterturn.report.ContactDrawing;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Overview;

/** A map of where the player's stroke meets the frets, for every stopped fret. */
public final class ContactPicture {
  private static final int MOST_BETWEEN = 4;

  private ContactPicture() {}

  /** The map, or null where it is not known or does not fit. */
  public static @Nullable Canvas draw(Overview overview, int width, int rows) {
    ContactMap map = overview.contact();
    if (map == null) {
      return null;
    }
    List<String> lines = List.of();
    // All stopped frets where there is room, else every other one, every third.
    for (int every = 1; every <= MOST_BETWEEN && (every == 1 || lines.size() > rows); every++) {
      lines = ContactDrawing.lines(map, every);
    }
    int widest = lines.stream().mapToInt(Canvas::cells).max().orElse(0);
    boolean fits = widest <= width && lines.size() <= rows;
    return fits ? Canvas.of(lines, widest, Ink.PLAIN) : null;
  }
}
