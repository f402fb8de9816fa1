package quarterturn.screen;

import java.util.List;

/** A view over the step: a title and lines, or the picture alone. */
final class Layers {
  private Layers() {}

  static Canvas draw(String title, List<Line> lines, Model model, int width, int rows) {
    Canvas canvas = new Canvas(width, rows);
    canvas.put(2, 1, title, Ink.STRONG);
    int room = rows - 4;
    int from = Math.min(model.scroll(), Math.max(0, lines.size() - room));
    Line.draw(canvas, 2, 3, lines, from, room);
    if (from + room < lines.size()) {
      canvas.put(2, rows - 1, "▼ more below");
    }
    return canvas;
  }

  static Canvas picture(Model model, int width, int rows) {
    Canvas picture = Pictures.of(model, width - 4, rows - 2);
    Canvas canvas = new Canvas(width, rows);
    if (picture == null) {
      canvas.put(2, 1, "This step has no picture.");
    } else {
      canvas.paste(2, 1, picture);
    }
    return canvas;
  }
}
