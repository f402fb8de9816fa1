package quarterturn.screen;

import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;

/**
 * Compares a view with its text file in {@code src/test/resources/quarterturn/screen/golden}. To
 * accept a change on purpose, run the tests with {@code -Dgolden.write=true} and read the diff.
 */
public final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/quarterturn/screen/golden");

  private Golden() {}

  public static void check(String name, Canvas canvas) throws IOException {
    Path file = FOLDER.resolve(name + ".txt");
    String drawn = marked(canvas);
    if (Boolean.getBoolean("golden.write")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, drawn);
    }
    String wanted = Files.exists(file) ? Files.readString(file) : "";
    assertWithMessage(name).that(drawn).isEqualTo(wanted);
  }

  /** The text, then a list of what is not drawn plainly. */
  private static String marked(Canvas canvas) {
    StringBuilder out = new StringBuilder(canvas.text());
    for (int r = 0; r < canvas.height(); r++) {
      for (int c = 0; c < canvas.width(); c++) {
        Ink ink = canvas.inkAt(c, r);
        boolean begins = c == 0 || canvas.inkAt(c - 1, r) != ink;
        if (begins && (ink == Ink.NOW || ink == Ink.SIGNAL)) {
          out.append(ink).append(" row ").append(r).append(": ").append(run(canvas, c, r));
        }
      }
    }
    if (canvas.cursorColumn() >= 0) {
      out.append("cursor: ")
          .append(canvas.cursorColumn())
          .append(", ")
          .append(canvas.cursorRow())
          .append('\n');
    }
    return out.toString();
  }

  private static String run(Canvas canvas, int from, int row) {
    StringBuilder out = new StringBuilder();
    for (int c = from; c < canvas.width(); c++) {
      if (canvas.inkAt(c, row) != canvas.inkAt(from, row)) {
        break;
      }
      out.appendCodePoint(canvas.at(c, row) == Canvas.TAIL ? ' ' : canvas.at(c, row));
    }
    return out.toString().strip() + "\n";
  }
}
