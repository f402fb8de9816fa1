package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Prompt;

/** Draws the places on an instrument where a rod nut can be. */
final class PlacesPicture {
  private static final int LEGEND = 28;
  private static final String[] DRAWN = {
    "┌───────┐                                  ┌──────────────────────┐",
    "│ ○ ○ ○ ╞══╤═══╤═══╤══╤══╤══╤══╤═╤═╤═╤═╤═══╪═══╡     (    )       │",
    "│   B  A│  │   │   │  │  │  │  │ │ │ │ │ D │  C│     (  E )       │",
    "│ ○ ○ ○ ╞══╧═══╧═══╧══╧══╧══╧══╧═╧═╧═╧═╧═══╪═══╡     (    )       │",
    "└───────┘                                  └──────────────────────┘"
  };

  private PlacesPicture() {}

  /**
   * A place of a rod nut: its letter in the drawing, the word that is its option's id, and its
   * name.
   */
  private enum Place {
    HEADSTOCK('A', "head", "headstock, behind the nut"),
    PLATE('B', "plate", "under a plate"),
    BODY('C', "body", "fingerboard's end"),
    POCKET('D', "pocket", "in the neck pocket"),
    HOLE('E', "hole", "in the sound hole");

    private final char letter;
    private final String word;
    private final String label;

    Place(char letter, String word, String label) {
      this.letter = letter;
      this.word = word;
      this.label = label;
    }
  }

  /**
   * The instrument with each place marked by its option's number, or by a letter where nothing is
   * asked.
   *
   * @param chosen id of the chosen place, or null
   */
  static @Nullable Canvas draw(
      List<Prompt.Option> options, @Nullable String chosen, int width, int rows) {
    if (rows < DRAWN.length || width < DRAWN[0].length()) {
      return null;
    }
    boolean legend = rows >= DRAWN.length + 3;
    Canvas canvas = new Canvas(width, DRAWN.length + (legend ? 3 : 0));
    for (int r = 0; r < DRAWN.length; r++) {
      canvas.put(0, r, DRAWN[r]);
    }
    List<String> words = new ArrayList<>();
    for (Place place : Place.values()) {
      int mark = mark(place, options);
      mark(canvas, place, mark, chosen);
      words.add((char) mark + " " + place.label);
    }
    Collections.sort(words);
    for (int i = 0; legend && i < words.size(); i++) {
      canvas.put(i % 3 * LEGEND, DRAWN.length + 1 + i / 3, words.get(i));
    }
    return canvas;
  }

  private static int mark(Place place, List<Prompt.Option> options) {
    for (int i = 0; i < Math.min(9, options.size()); i++) {
      if (options.get(i).id().contains(place.word)) {
        return '1' + i;
      }
    }
    return place.letter;
  }

  private static void mark(Canvas canvas, Place place, int mark, @Nullable String chosen) {
    for (int r = 0; r < DRAWN.length; r++) {
      int column = DRAWN[r].indexOf(place.letter);
      if (column >= 0) {
        boolean on = chosen != null && chosen.contains(place.word);
        canvas.set(column, r, mark, on ? Ink.NOW : Ink.STRONG);
      }
    }
  }
}
