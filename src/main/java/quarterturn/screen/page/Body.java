package quarterturn.screen.page;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Prompt;

/**
 * Draws the middle of the page: the step's text, picture, controls and what is said of the last
 * key. Where there is too little room the picture goes first; then the text scrolls, and answers to
 * choose from scroll with it, below their question.
 */
final class Body {
  private static final int WIDEST_TEXT = 92;
  private static final int LEAST_PICTURE = 3;
  private static final int MOST_PINNED = 2;
  private static final int NARROWEST_TEXT = 28;

  private final Model model;
  private final int width;
  private final int rows;
  private final List<String> said;
  private final Pane text;
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
    List<String> message =
        model.message().isEmpty() ? List.of() : Wrap.lines(model.message(), width - 6);
    // Below a turn there is one row for a message; a longer one begins the text, which scrolls.
    boolean begins = model.draft() instanceof Draft.Turning && message.size() > 1;
    said = begins ? List.of() : message;
    // A blank row above the text, one between the text and the rest, and one for the hint at least.
    int room = rows - 2 - Math.max(1, said.size());
    boolean turning = model.prompt() instanceof Prompt.TurnRod;
    beside = turning ? Pictures.of(model, inner - NARROWEST_TEXT - 2, room - 1) : null;
    int column = beside == null ? inner : inner - beside.width() - 2;
    int wide = Math.min(column, WIDEST_TEXT);
    facts =
        beside != null && model.prompt() instanceof Prompt.TurnRod turn
            ? DialPicture.facts(turn, wide)
            : List.of();
    List<Line> full = begins ? Line.wrapped("!", model.message(), wide) : new ArrayList<>();
    List<Line> brief = new ArrayList<>(full);
    full.addAll(Flow.of(model, wide, false));
    brief.addAll(Flow.of(model, wide, true));
    Options options = Options.of(model, Math.min(inner, WIDEST_TEXT));
    int above = room - (facts.isEmpty() ? 0 : facts.size() + 1);
    Canvas drawn = options.none() ? controls(zone, false) : drawn(options, inner);
    Canvas small = options.none() ? controls(zone, true) : drawn;
    // Without the example that helps to type, the text or the picture may have room.
    if (saves(full, room)
        || (picture(above - drawn.height(), brief) == null
            && picture(above - small.height(), brief) != null)) {
      drawn = small;
    }
    int most = Math.max(0, above - drawn.height());
    Canvas withFull = picture(most, full);
    Canvas withBrief = picture(most, brief);
    // Hazards that were accepted before are only named where that makes room for the step itself.
    boolean shorten = full.size() > most || (withFull == null && withBrief != null);
    List<Line> lines = shorten ? brief : full;
    below = shorten ? withBrief : withFull;
    boolean together = !options.none() && lines.size() > most;
    controls = together ? new Canvas(inner, 0) : drawn;
    text = together ? flow(lines, options, wide, room) : pane(lines, Math.min(lines.size(), most));
  }

  /** Whether the text can hardly stand above four rows of controls. */
  private static boolean saves(List<Line> text, int room) {
    return text.size() > room - 4;
  }

  private Pane pane(List<Line> lines, int shown) {
    return Pane.of(lines, lines.size(), List.of(), shown, model.scroll(), -1, -1);
  }

  /** The text and the answers below it, in which the marked answer is in view. */
  private Pane flow(List<Line> lines, Options options, int wide, int room) {
    List<Line> all = new ArrayList<>(lines);
    all.add(Line.BLANK);
    int before = all.size();
    all.addAll(options.lines());
    List<Line> pinned = question(wide);
    boolean follow = !model.byHand() && options.first() >= 0;
    return Pane.of(
        all,
        Math.max(0, lines.size() - pinned.size()),
        pinned,
        room,
        model.scroll(),
        follow ? before + options.first() : -1,
        follow ? before + options.last() : -1);
  }

  /** The last sentence of the step's text, which asks for the answer. */
  private List<Line> question(int wide) {
    String[] sentences = model.prompt().said().text().strip().split("(?<=[.?!:])\\s+");
    List<Line> lines =
        Line.wrapped("►", Ink.STRONG, sentences[sentences.length - 1], Ink.PLAIN, wide);
    return lines.subList(0, Math.min(MOST_PINNED, lines.size()));
  }

  private static Canvas drawn(Options options, int inner) {
    Canvas canvas = new Canvas(inner, options.lines().size());
    Line.draw(canvas, 0, 0, options.lines(), 0, options.lines().size());
    return canvas;
  }

  private Canvas controls(ZoneId zone, boolean brief) {
    return Controls.of(model, zone, Math.min(width - 4, WIDEST_TEXT), brief);
  }

  /** The picture in what a text leaves of so many rows, or null. */
  private @Nullable Canvas picture(int rows, List<Line> lines) {
    int left = rows - lines.size() - 1;
    return beside != null || left < LEAST_PICTURE ? null : Pictures.of(model, width - 4, left);
  }

  /** Whether there is a picture but no room for it. */
  boolean hidesPicture() {
    return beside == null && below == null && Pictures.of(model, 2 * width, 2 * rows) != null;
  }

  /** The first line of the text that is in view. */
  int scroll() {
    return text.from();
  }

  /** How many lines of the text are in view. */
  int inView() {
    return text.shown();
  }

  /** Whether the text goes on below what is in view. */
  boolean more() {
    return text.more();
  }

  Canvas draw() {
    Canvas canvas = new Canvas(width, rows);
    int at = 1 + text.rows() + 1;
    if (beside != null) {
      canvas.paste(2, 1, beside);
      Line.draw(canvas, 2 + beside.width() + 2, at, facts, 0, facts.size());
      at = Math.max(at + facts.size(), 1 + beside.height()) + 1;
    }
    text.draw(canvas, beside == null ? 2 : 2 + beside.width() + 2, 1);
    if (below != null) {
      canvas.paste(2, at, below);
      at += below.height() + 1;
    }
    canvas.paste(2, at, controls);
    history(canvas, at + controls.height() + 2, rows - Math.max(1, said.size()));
    message(canvas);
    return canvas;
  }

  private void message(Canvas canvas) {
    for (int i = 0; i < said.size(); i++) {
      int row = rows - said.size() + i;
      canvas.row(0, row, width, ' ', Ink.PLAIN);
      canvas.put(2, row, i == 0 ? "!" : " ", Ink.STRONG);
      canvas.put(4, row, said.get(i), Ink.STRONG);
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
}
