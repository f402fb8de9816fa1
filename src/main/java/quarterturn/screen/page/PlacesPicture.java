package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Kind;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Prompt;

/** Draws the places on a kind of instrument where a rod nut can be. */
final class PlacesPicture {
  private static final List<String> DRAWN =
      List.of(
          "┌────────────┐                      ┌──────────────────┐",
          "│            ╞══╤══╤══╤═╤═╤═╤═╤═╤═╤═╪════╗             │",
          "│            ║  │  │  │ │ │ │ │ │ │ │    ║             │",
          "│            ╞══╧══╧══╧═╧═╧═╧═╧═╧═╧═╪════╝             │",
          "└────────────┘                      └──────────────────┘");
  private static final int LEGEND = 28;
  private static final int SLIM = DRAWN.size() - 2;
  private static final int WITH_LEGEND = DRAWN.size() + 4;

  private PlacesPicture() {}

  /** A place of a rod nut: its column in the drawing, what it is drawn in, and its name. */
  private enum Place {
    HEAD(11, " A ", "headstock, in plain sight"),
    HEAD_PLATE(7, "[B]", "headstock, under a plate"),
    BODY(42, "║C ", "body end, within reach"),
    BODY_PLATE(45, "[D]", "body end, under a plate"),
    HOLE(51, "(E)", "inside the sound hole"),
    POCKET(38, "░F░", "hidden in the neck pocket");

    private final int column;
    private final String drawn;
    private final String label;

    Place(int column, String drawn, String label) {
      this.column = column;
      this.drawn = drawn;
      this.label = label;
    }

    /** Whether an answer means this place; a plate that is at either end is at both. */
    boolean isMeant(Prompt.Option option) {
      String id = option.id();
      String words = id + " " + option.label();
      if (id.contains("hole") || id.contains("pocket")) {
        return this == (id.contains("hole") ? HOLE : POCKET);
      }
      boolean plate = id.contains("plate");
      boolean head = words.contains("headstock");
      boolean body = words.contains("body end") || id.contains("body");
      return switch (this) {
        case HEAD -> head && !plate;
        case HEAD_PLATE -> plate && (head || !body);
        case BODY -> body && !plate;
        case BODY_PLATE -> plate && (body || !head);
        case HOLE, POCKET -> false;
      };
    }
  }

  /**
   * The instrument with each place marked by the number of its answer, or by a letter where nothing
   * is asked. Where the kind has no sound hole none is drawn.
   *
   * @param chosen the answer that is marked or was given, or null
   */
  static @Nullable Canvas draw(
      @Nullable Kind kind,
      List<Prompt.Option> options,
      Prompt.@Nullable Option chosen,
      int width,
      int rows) {
    int wide = DRAWN.get(0).length();
    if (rows < SLIM || width < wide) {
      return null;
    }
    boolean legend = rows >= WITH_LEGEND;
    Canvas canvas = new Canvas(width, legend ? WITH_LEGEND : DRAWN.size());
    canvas.paste(0, 0, Canvas.of(DRAWN, wide, Ink.PLAIN));
    int tuners = kind == null ? 0 : kind.strings().size();
    canvas.put(1, 1, " ○".repeat((tuners + 1) / 2));
    canvas.put(1, 3, " ○".repeat(tuners / 2));
    List<String> words = new ArrayList<>();
    for (Place place : Place.values()) {
      int mark = mark(place, options);
      if (mark > 0 && (place != Place.HOLE || kind == null || kind.make().soundHole())) {
        canvas.put(place.column - 1, 2, place.drawn);
        boolean on = chosen != null && place.isMeant(chosen);
        canvas.set(place.column, 2, mark, on ? Ink.NOW : Ink.STRONG);
        words.add((char) mark + " " + place.label);
        if (place == Place.HOLE) {
          canvas.put(place.column - 1, 1, ".-.");
          canvas.put(place.column - 1, 3, "'-'");
        }
      }
    }
    Collections.sort(words);
    for (int i = 0; legend && i < words.size(); i++) {
      canvas.put(i % 2 * LEGEND, DRAWN.size() + 1 + i / 2, words.get(i));
    }
    if (rows < DRAWN.size()) {
      Canvas slim = new Canvas(width, SLIM);
      slim.paste(0, -1, canvas);
      return slim;
    }
    return canvas;
  }

  /** The number of the answer that means a place, else its letter; 0 where no answer means it. */
  private static int mark(Place place, List<Prompt.Option> options) {
    for (int i = 0; i < Math.min(9, options.size()); i++) {
      if (place.isMeant(options.get(i))) {
        return '1' + i;
      }
    }
    return options.isEmpty() ? place.drawn.charAt(1) : 0;
  }
}
