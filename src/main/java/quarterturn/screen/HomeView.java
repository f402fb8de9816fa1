package quarterturn.screen;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.page.Foot;
import quarterturn.screen.page.KeyHints;
import quarterturn.screen.page.Line;
import quarterturn.screen.page.TooSmall;
import quarterturn.screen.state.Picks;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Key;
import quarterturn.screen.terminal.Wrap;

/**
 * What is seen when the program is started with nothing to do: what is due, what else is
 * unfinished, and what can be begun.
 *
 * @param at index of the marked line over all the lists, or -1
 * @param message a hint; empty for none
 */
record HomeView(
    List<HomeItem> due, List<HomeItem> unfinished, List<HomeItem> starts, int at, String message) {
  HomeView {
    due = List.copyOf(due);
    unfinished = List.copyOf(unfinished);
    starts = List.copyOf(starts);
  }

  /** With the first line marked. */
  static HomeView of(List<HomeItem> due, List<HomeItem> unfinished, List<HomeItem> starts) {
    boolean empty = due.isEmpty() && unfinished.isEmpty() && starts.isEmpty();
    return new HomeView(due, unfinished, starts, empty ? -1 : 0, "");
  }

  /**
   * What a key leads to.
   *
   * @param choice what was chosen, or null where the view goes on
   */
  record Step(HomeView view, @Nullable HomeChoice choice) {}

  private Step show(int marked, String hint) {
    return new Step(new HomeView(due, unfinished, starts, marked, hint), null);
  }

  Step key(Key key) {
    int size = due.size() + unfinished.size() + starts.size();
    int to = Picks.moved(at, size, key);
    if (to != at) {
      return show(to, "");
    }
    if (key == Key.Named.ENTER && at >= 0) {
      return new Step(this, marked());
    }
    if (Update.isLetter(key, 'q') || key.equals(new Key.Function(10))) {
      return new Step(this, new HomeChoice.Quit());
    }
    String hint =
        key == Key.Named.ESC
            ? "Esc never leaves; q does."
            : Update.isLetter(key, '?') || key.equals(new Key.Function(1))
                ? "Keys: a number or the arrows mark a line, Enter goes on, q closes."
                : "Mark a line with its number or the arrows, then Enter.";
    return show(at, hint);
  }

  private HomeChoice marked() {
    int afterDue = at - due.size();
    if (afterDue < 0) {
      return new HomeChoice.Due(at);
    }
    return afterDue < unfinished.size()
        ? new HomeChoice.Resume(afterDue)
        : new HomeChoice.Start(afterDue - unfinished.size());
  }

  Canvas draw(int width, int height) {
    if (TooSmall.is(width, height)) {
      return TooSmall.draw(width, height);
    }
    Canvas canvas = new Canvas(width, height);
    canvas.put(2, 0, "quarterturn", Ink.STRONG);
    String motto = "one safe turn at a time";
    canvas.put(width - 2 - Canvas.cells(motto), 0, motto);
    canvas.row(0, 1, width, '─', Ink.PLAIN);
    canvas.row(0, height - 2, width, '─', Ink.PLAIN);
    List<Line> lines = lines(width - 4);
    canvas.put(2, height - 4, "It does not replace a qualified repairer. Local rules come first.");
    int room = height - 7;
    int marked = 0;
    for (int i = 0; i < lines.size(); i++) {
      marked = lines.get(i).lead().startsWith("►") ? i : marked;
    }
    int from = Math.max(0, Math.min(marked - room / 2, lines.size() - room));
    Line.draw(canvas, 2, 2, lines, from, room);
    if (!message.isEmpty()) {
      canvas.put(2, height - 3, "! " + Wrap.cut(message, width - 6), Ink.STRONG);
    }
    Foot.keys(
        canvas,
        height - 1,
        List.of(
            new KeyHints.Hint("1-9 ↑ ↓", "mark"),
            new KeyHints.Hint("Enter", "go"),
            new KeyHints.Hint("q", "close")),
        width - 4);
    return canvas;
  }

  private List<Line> lines(int width) {
    List<Line> out = new ArrayList<>();
    out.add(Line.BLANK);
    list(out, "Due", due, 0, width);
    list(out, "Unfinished", unfinished, due.size(), width);
    list(out, "Begin", starts, due.size() + unfinished.size(), width);
    return out;
  }

  private void list(List<Line> out, String heading, List<HomeItem> items, int first, int width) {
    if (items.isEmpty()) {
      return;
    }
    out.add(Line.heading(heading));
    out.add(Line.BLANK);
    for (int i = 0; i < items.size(); i++) {
      item(out, items.get(i), first + i, width);
    }
  }

  private void item(List<Line> out, HomeItem item, int index, int width) {
    boolean on = index == at;
    String lead = (on ? "►" : " ") + String.format("%2d ", index + 1);
    String label = Wrap.cut(item.label(), width - 5);
    out.add(new Line(lead, Ink.STRONG, 4, " " + label + " ", on ? Ink.NOW : Ink.STRONG));
    for (String text : new String[] {item.detail(), item.due()}) {
      if (!text.isEmpty()) {
        for (String line : Wrap.lines(text, Math.min(width - 5, 90))) {
          out.add(new Line("", Ink.PLAIN, 5, line, Ink.PLAIN));
        }
      }
    }
    out.add(Line.BLANK);
  }
}
