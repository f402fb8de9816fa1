package quarterturn.screen;

import java.util.ArrayList;
import java.util.List;
import quarterturn.screen.page.CardView;
import quarterturn.screen.page.Foot;
import quarterturn.screen.page.Line;
import quarterturn.screen.page.Pane;
import quarterturn.screen.page.TooSmall;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Question;
import quarterturn.unit.Printable;

/**
 * Draws a question or a message on the full screen. Where not all fits, only the marked option has
 * its details, and the rest is scrolled to.
 */
final class QuestionPage {
  private static final int WIDEST = 90;
  private static final int INDENT = 5;

  /** Rows of the title, the two rules, the keys, and the two that marks and messages have. */
  private static final int AROUND = 6;

  /** From spaced and whole to close and brief. */
  private static final boolean[][] LOOSE = {{true, true}, {false, true}, {false, false}};

  private final QuestionView view;
  private final int width;
  private final int height;
  private final List<String> said;
  private final List<Line> lines = new ArrayList<>();
  private final List<Line> below = new ArrayList<>();
  private int question;
  private int first = -1;
  private int last = -1;

  private QuestionPage(QuestionView view, int width, int height) {
    this.view = view;
    this.width = width;
    this.height = height;
    said = view.message().isEmpty() ? List.of() : Wrap.lines(view.message(), width - 6);
    Question asked = view.question();
    List<Line> texts = new ArrayList<>();
    boolean titled = !asked.title().isEmpty();
    asked.lines().stream()
        .skip(titled ? 0 : 1)
        .forEach(text -> texts.addAll(paragraph(Printable.of(text))));
    if (titled) {
      lines.addAll(texts);
      if (asked instanceof Question.Asked one) {
        lines.add(Line.BLANK);
        question = lines.size();
        lines.add(Line.heading(one.asks()));
      }
    } else {
      below.addAll(texts);
    }
    int before = lines.size();
    int needed = below.isEmpty() ? 0 : below.size() + 1;
    for (boolean[] loose : LOOSE) {
      lines.subList(before, lines.size()).clear();
      list(loose[0], loose[1]);
      if (lines.size() + needed <= room()) {
        return;
      }
    }
    if (!below.isEmpty()) {
      lines.add(Line.BLANK);
      lines.addAll(below);
      below.clear();
    }
  }

  /** A paragraph, wrapped; a row of a table or a plot is cut, since its columns must stay. */
  private List<Line> paragraph(String text) {
    return text.strip().contains("  ") || text.startsWith(" ")
        ? List.of(new Line("", Ink.PLAIN, 0, Wrap.cut(text, width - 2), Ink.PLAIN))
        : Line.wrapped(text, width - 4);
  }

  private int room() {
    return height - AROUND - Math.max(0, said.size() - 1) - (view.takesWords() ? 2 : 0);
  }

  /**
   * Adds the options.
   *
   * @param spaced whether a blank line stands before each
   * @param whole whether all of them have their details, or the marked one alone
   */
  private void list(boolean spaced, boolean whole) {
    String group = "";
    for (int i = 0; i < view.options().size(); i++) {
      Question.Option option = view.options().get(i);
      boolean on = i == view.at();
      first = on ? lines.size() : first;
      if (!option.group().equals(group)) {
        group = option.group();
        if (!lines.isEmpty()) {
          lines.add(Line.BLANK);
        }
        lines.add(Line.heading(group));
      }
      if (spaced) {
        lines.add(Line.BLANK);
      }
      String lead = (on ? "►" : " ") + String.format("%2d", i + 1);
      String name = option.label().isEmpty() ? option.name() : option.label();
      for (String label : Wrap.lines(Printable.of(name), width - INDENT - 5)) {
        Ink ink = on ? Ink.NOW : Ink.STRONG;
        lines.add(new Line(lead, Ink.STRONG, INDENT - 1, " " + label + " ", ink));
        lead = "";
      }
      if ((whole || on) && !option.detail().isEmpty()) {
        Wrap.lines(Printable.of(option.detail()), Math.min(width - INDENT - 4, WIDEST))
            .forEach(line -> lines.add(new Line("", Ink.PLAIN, INDENT, line, Ink.PLAIN)));
      }
      last = on ? lines.size() - 1 : last;
    }
  }

  private Pane pane() {
    boolean follow = !view.byHand() && first >= 0;
    List<Line> pinned =
        question == 0 ? List.of() : lines.subList(question, Math.min(question + 1, lines.size()));
    return Pane.of(
        lines,
        question,
        pinned,
        room() - below.size(),
        view.scroll(),
        follow ? first : -1,
        follow ? last : -1);
  }

  /** What is in view at this size. */
  static Pane pane(QuestionView view, int width, int height) {
    return new QuestionPage(view, width, height).pane();
  }

  static Canvas draw(QuestionView view, int width, int height) {
    return TooSmall.is(width, height)
        ? TooSmall.draw(width, height)
        : new QuestionPage(view, width, height).draw();
  }

  private Canvas draw() {
    Canvas canvas = new Canvas(width, height);
    Question asked = view.question();
    String title = asked.title().isEmpty() ? asked.lines().get(0) : asked.title();
    canvas.put(2, 0, Wrap.cut(title, width - 4), Ink.STRONG);
    canvas.row(0, 1, width, '─', Ink.PLAIN);
    canvas.row(0, height - 2, width, '─', Ink.PLAIN);
    Pane pane = pane();
    pane.draw(canvas, 2, 3);
    Line.draw(canvas, 2, height - 3 - below.size(), below, 0, below.size());
    if (view.takesWords()) {
      int row = 4 + Math.min(lines.size(), pane.rows());
      CardView.field(canvas, row, view.field(), false, width - 10);
    }
    for (int i = 0; i < said.size(); i++) {
      int row = height - 2 - said.size() + i;
      canvas.row(0, row, width, ' ', Ink.PLAIN);
      canvas.put(2, row, (i == 0 ? "! " : "  ") + said.get(i), Ink.STRONG);
    }
    Foot.keys(canvas, height - 1, view.hints(), width - 4);
    return canvas;
  }
}
