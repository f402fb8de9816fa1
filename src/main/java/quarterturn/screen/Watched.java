package quarterturn.screen;

import java.util.List;
import quarterturn.screen.page.Foot;
import quarterturn.screen.page.KeyHints;
import quarterturn.screen.state.Autoplay;
import quarterturn.screen.state.Layer;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;

/** A session that plays by itself: its page says so, with the keys that pace it. */
final class Watched {
  private static final List<KeyHints.Hint> PACING =
      List.of(
          new KeyHints.Hint("Space", "pause"),
          new KeyHints.Hint("→", "step"),
          new KeyHints.Hint("+ -", "speed"),
          new KeyHints.Hint("q", "leave"),
          new KeyHints.Hint("?", "keys"));

  private Watched() {}

  /** The session's page with that on it; another view, and the end, keep the keys of their own. */
  static Canvas page(Canvas page, Model model, Autoplay autoplay) {
    int top = page.height() - Foot.rows(page.height());
    if (model.layer() != Layer.NONE || model.prompt().ended() || top < 1) {
      return page;
    }
    String words = " " + autoplay.words(model) + " ";
    page.put(page.width() - 2 - Canvas.cells(words), top, words, Ink.NOW);
    page.row(0, page.height() - 1, page.width(), ' ', Ink.PLAIN);
    Foot.keys(page, page.height() - 1, PACING, page.width() - 4);
    return page;
  }
}
