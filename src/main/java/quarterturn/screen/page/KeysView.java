package quarterturn.screen.page;

import java.util.List;
import quarterturn.screen.state.Command;
import quarterturn.screen.state.Model;
import quarterturn.screen.state.NamingKeys;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;

/** The list of all keys: the step's at the left, those of every view at the right. */
final class KeysView {
  private static final int KEY = 10;

  private KeysView() {}

  static Canvas draw(Model model, int width, int rows) {
    Canvas canvas = new Canvas(width, rows);
    canvas.put(2, 1, "Keys of this step", Ink.STRONG);
    int row = 3;
    int right = width < 76 ? 30 : 38;
    for (KeyHints.Hint hint : KeyHints.own(model)) {
      key(canvas, 2, row++, hint.key(), hint.meaning());
    }
    key(canvas, 2, row++, "PgUp PgDn", "scroll the text");
    key(canvas, 2, row++, "Esc", "one view back");
    key(canvas, 2, row++, "Ctrl-C", "leave in order");
    key(canvas, 2, row++, "Ctrl-Z", "pause, fg resumes");
    canvas.put(right, 1, "Keys of every step", Ink.STRONG);
    int other = 3;
    for (Command command : Command.values()) {
      if (command == Command.LINE && !NamingKeys.may(model)) {
        continue;
      }
      key(canvas, right, other++, command.both(), command.meaning());
    }
    String typing = "While you type, letters are text: use the F keys, or press Esc first.";
    String signs = "In the line on top: √ done, ► now, · not yet.";
    List<String> last = model.draft().typing() ? List.of(typing, signs) : List.of(signs);
    int at = Math.max(row, other) + 1;
    for (String line : last) {
      for (String part : Wrap.lines(line, width - 4)) {
        canvas.put(2, at++, part);
      }
    }
    return canvas;
  }

  private static void key(Canvas canvas, int column, int row, String key, String meaning) {
    canvas.put(column, row, key, Ink.STRONG);
    canvas.put(column + KEY, row, Wrap.cut(meaning, canvas.width() - column - KEY - 1));
  }
}
