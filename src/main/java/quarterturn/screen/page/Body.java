package quarterturn.screen.page;

import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Prompt;

/**
 * Draws the middle of the page: the step's text, picture, controls and a line for hints. Where
 * there is too little room the text goes first, then the controls, then the picture.
 */
final class Body {
  private static final int LEAST_TEXT = 3;
  private static final int WIDEST_TEXT = 92;
  private static final int LEAST_PICTURE = 3;
  private static final int NARROWEST_TEXT = 28;

  private final Model model;
  private final int width;
  private final int rows;
  private final List<Line> text;
  private final int textRows;
  private final List<Line> facts;
  private final Canvas controls;
  private final @Nullable Canvas beside;
  private final @Nullable Canvas below;

  /** Divides the rows and columns among the parts. */
  Body(Model model, ZoneId zone, int width, int rows) {
    this.model = model;
    this.width = width;
    this.rows = rows;
    int inner = width - 4;
    // A blank row above the text, one between the text and the rest, and one for the hint. A longer
    // hint covers what is above it for a moment, so that nothing jumps.
    int room = rows - 3;
    boolean turning = model.prompt() instanceof Prompt.TurnRod;
    beside = turning ? Pictures.of(model, inner - NARROWEST_TEXT - 2, room - 1) : null;
    int column = beside == null ? inner : inner - beside.width() - 2;
    int wide = Math.min(column, WIDEST_TEXT);
    facts =
        beside != null && model.prompt() instanceof Prompt.TurnRod turn
            ? DialPicture.facts(turn, wide)
            : List.of();
    List<Line> full = Flow.of(model, wide, false);
    List<Line> brief = Flow.of(model, wide, true);
    int least = Math.min(LEAST_TEXT, full.size());
    controls = Controls.of(model, zone, Math.min(inner, WIDEST_TEXT), room - least);
    int most = room - controls.height() - (facts.isEmpty() ? 0 : facts.size() + 1);
    // A picture has a blank row of its own; at a reading a hint may rather cover the last control.
    int left = most - (model.prompt() instanceof Prompt.Measure ? 0 : 1);
    Canvas withFull = picture(inner, left - full.size());
    Canvas withBrief = picture(inner, left - brief.size());
    // Hazards that were accepted before are only named where that makes room for the step itself.
    boolean shorten = full.size() > most || (withFull == null && withBrief != null);
    text = shorten ? brief : full;
    below = shorten ? withBrief : withFull;
    textRows = Math.min(text.size(), most);
  }

  private @Nullable Canvas picture(int inner, int left) {
    return beside != null || left < LEAST_PICTURE ? null : Pictures.of(model, inner, left);
  }

  /** Whether there is a picture but no room for it. */
  boolean hidesPicture() {
    return beside == null && below == null && Pictures.of(model, 2 * width, 2 * rows) != null;
  }

  /** Most lines that the text can be scrolled down. */
  int mostScroll() {
    return Math.max(0, text.size() - textRows);
  }

  Canvas draw() {
    Canvas canvas = new Canvas(width, rows);
    int at = 1 + textRows + 1;
    if (beside != null) {
      canvas.paste(2, 1, beside);
      int column = 2 + beside.width() + 2;
      Line.draw(canvas, column, at, facts, 0, facts.size());
      at = Math.max(at + facts.size(), 1 + beside.height()) + 1;
      drawText(canvas, column);
    } else {
      drawText(canvas, 2);
    }
    if (below != null) {
      canvas.paste(2, at, below);
      at += below.height() + 1;
    }
    canvas.paste(2, at, controls);
    history(canvas, at + controls.height() + 2, rows - 1);
    message(canvas);
    return canvas;
  }

  private void message(Canvas canvas) {
    if (model.message().isEmpty()) {
      return;
    }
    List<String> lines = Wrap.lines(model.message(), width - 6);
    for (int i = 0; i < lines.size(); i++) {
      int row = rows - lines.size() + i;
      canvas.row(0, row, width, ' ', Ink.PLAIN);
      canvas.put(2, row, i == 0 ? "!" : " ", Ink.STRONG);
      canvas.put(4, row, lines.get(i), Ink.STRONG);
    }
  }

  /** Draws the readings of relief so far in the free rows of a tall window. */
  private void history(Canvas canvas, int from, int to) {
    Canvas history =
        Pictures.ofRelief(model)
            ? HistoryPicture.draw(model.overview(), canvas.width() - 4, to - from - 1)
            : null;
    if (history != null) {
      canvas.paste(2, to - history.height() - 1, history);
    }
  }

  private void drawText(Canvas canvas, int column) {
    int from = Math.min(model.scroll(), mostScroll());
    Line.draw(canvas, column, 1, text, from, textRows);
    int below = text.size() - from - textRows;
    if (below > 0) {
      mark(canvas, textRows + 1, "▼ PgDn, " + below + " more");
    }
    if (from > 0) {
      mark(canvas, 0, "▲ PgUp");
    }
  }

  private static void mark(Canvas canvas, int row, String words) {
    canvas.put(canvas.width() - 2 - Canvas.cells(words), row, words, Ink.STRONG);
  }
}
