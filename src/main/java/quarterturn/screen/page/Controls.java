package quarterturn.screen.page;

import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.condition.Feel;
import quarterturn.quick.TypedAhead;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Field;
import quarterturn.screen.state.Model;
import quarterturn.screen.state.Readings;
import quarterturn.screen.state.Turns;
import quarterturn.screen.state.Waits;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Prompt;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/** Draws what the person answers with: options, a field or a bar. */
final class Controls {
  private static final int LOOKED_AT = 500;

  private Controls() {}

  /** A canvas with the controls, as high as needed; answers to choose from are {@link Options}. */
  static Canvas of(Model model, ZoneId zone, int width, boolean brief) {
    Prompt prompt = model.prompt();
    Draft draft = model.draft();
    if (draft instanceof Draft.Naming naming) {
      Canvas canvas = new Canvas(width, 3);
      String wanted = TypedAhead.wanted(prompt);
      canvas.put(0, 0, Wrap.cut("By name; wanted here: " + wanted, width), Ink.STRONG);
      field(canvas, 1, naming.field(), true, width - 4);
      canvas.put(0, 2, Wrap.cut("like  relief .42 low .38 high; a12 2.4 2.2 2.0 1.9", width));
      return canvas;
    }
    Prompt.Cases<Canvas> cases =
        new Prompt.Cases<>(
            tell -> lines(width, tell.enter()),
            caution -> lines(width, "Press u: I have read this and will do it. (Not Enter.)"),
            choose -> new Canvas(width, 0),
            write -> writing((Draft.Writing) draft, width),
            measure -> reading(measure, (Draft.Reading) draft, width, brief),
            turn -> turning(turn, draft, width),
            wait -> waiting(model, wait, zone, width),
            done -> lines(width, "Press Enter to close."),
            over -> lines(width, "Press Enter to close."));
    return prompt.match(cases);
  }

  private static Canvas writing(Draft.Writing draft, int width) {
    Canvas canvas = new Canvas(width, 2);
    field(canvas, 0, draft.field(), true, Math.min(70, width - 4));
    canvas.put(0, 1, "- = nothing to write");
    return canvas;
  }

  private static Canvas turning(Prompt.TurnRod turn, Draft draft, int width) {
    return draft instanceof Draft.Made made
        ? made(turn, made, width)
        : lines(
            width,
            draft instanceof Draft.Before
                ? "Press Enter when it is done; n if it creaked or would not turn."
                : "Press Enter once turned, or when it would not turn.");
  }

  private static Canvas lines(int width, String text) {
    return Canvas.of(Wrap.lines(text, width), width, Ink.STRONG);
  }

  private static Canvas reading(
      Prompt.Measure measure, Draft.Reading reading, int width, boolean brief) {
    boolean gap = measure.quantity().bracket();
    Canvas canvas = new Canvas(width, brief ? 2 : 3);
    int end = field(canvas, 0, reading.field(), reading.typing(), Math.min(36, width - 32)) + 2;
    String wanted =
        gap
            ? "gap in mm, steps of " + Decimals.plain(measure.step())
            : measure.quantity().said() + " in " + measure.quantity().unit();
    String typed = reading.field().text();
    String told = reading.field().blank() ? wanted : Readings.readAs(typed, measure);
    canvas.put(end, 0, Wrap.cut(told, width - end));
    String example = measure.quantity().example();
    if (brief) {
      String words =
          gap
              ? "like 0.30 passes 0.35 lifts; t touches; c can't measure"
              : "like " + example + "; c can't measure";
      canvas.put(0, 1, Wrap.cut(words, width));
      return canvas;
    }
    String words =
        gap ? "t = it touches, no gap      c = I can't measure it" : "c = I can't measure it";
    canvas.put(0, 1, words);
    String like = gap ? "0.30 passes 0.35 lifts,  0.30..0.35  or  12 thou" : example;
    canvas.put(0, 2, Wrap.cut("like  " + like, width));
    return canvas;
  }

  private static int field(Canvas canvas, int row, Field field, boolean typing, int cells) {
    int at = canvas.put(0, row, "[ ", Ink.STRONG);
    // Of a long line only what may be in view is looked at, since it is drawn with every key.
    int from = Math.max(0, field.at() - LOOKED_AT);
    int to = Math.min(field.text().length(), field.at() + LOOKED_AT);
    String before = Wrap.cutFront(field.text().substring(from, field.at()), cells - 2);
    int cursor = canvas.put(at, row, before);
    int room = cells - Canvas.cells(before);
    canvas.put(cursor, row, Wrap.cut(field.text().substring(field.at(), to), room));
    if (typing) {
      canvas.cursor(cursor, row);
    }
    return canvas.put(at + cells, row, " ]", Ink.STRONG);
  }

  private static Canvas made(Prompt.TurnRod turn, Draft.Made made, int width) {
    List<Line> feels = new ArrayList<>();
    for (Feel feel : Feel.values()) {
      boolean on = feel.ordinal() == made.feel();
      Ink ink = on ? Ink.NOW : Ink.PLAIN;
      feels.add(new Line(on ? "►" : "", Ink.STRONG, 2, " " + feel.label() + " ", ink));
    }
    Canvas canvas = new Canvas(width, 2 + feels.size());
    int end = field(canvas, 0, made.field(), true, 12);
    Turn way = made.otherWay() ? turn.turn().opposite() : turn.turn();
    int at = canvas.put(end + 1, 0, way.turns() > 0 ? " tightened " : " loosened ", Ink.NOW);
    canvas.put(at + 1, 0, Wrap.cut(inDegrees(turn, made), width - at - 1));
    canvas.put(0, 1, Wrap.cut("like 1/8 smooth, or 0 jammed.  Tab: the other way.", width));
    Line.draw(canvas, 0, 2, feels, 0, feels.size());
    return canvas;
  }

  private static String inDegrees(Prompt.TurnRod turn, Draft.Made made) {
    try {
      double degrees = Turns.turned(turn, made).size().degrees();
      return Decimals.print(degrees, 0) + " degrees";
    } catch (NotUnderstoodException notYet) {
      return "how far?";
    }
  }

  private static Canvas waiting(Model model, Prompt.Wait wait, ZoneId zone, int width) {
    List<String> words = new ArrayList<>();
    if (Waits.over(model, wait)) {
      words.add("It is over. Press Enter to go on.");
    } else {
      Duration left = Duration.between(model.now(), wait.until());
      words.add(TimerBar.words(left) + " left, until " + new Dates(zone).over(wait.until()));
      words.addAll(Wrap.lines("Meanwhile: " + wait.meanwhile(), width));
      words.addAll(Wrap.lines("You can close the program; it will go on waiting.", width));
    }
    boolean lifting = model.draft() instanceof Draft.Lifting;
    Canvas canvas = new Canvas(width, 1 + words.size() + (lifting ? 3 : 0));
    canvas.paste(0, 0, TimerBar.draw(wait.from(), wait.until(), model.now(), Math.min(width, 60)));
    for (int i = 0; i < words.size(); i++) {
      canvas.put(0, 1 + i, words.get(i), i == 0 ? Ink.STRONG : Ink.PLAIN);
    }
    if (model.draft() instanceof Draft.Lifting draft) {
      canvas.put(0, words.size() + 2, "Why may it end early? It goes into the record.", Ink.STRONG);
      field(canvas, words.size() + 3, draft.field(), true, Math.min(64, width - 4));
    }
    return canvas;
  }
}
