package quarterturn.screen;

import java.util.List;
import quarterturn.lesson.Level;
import quarterturn.lesson.Levels;
import quarterturn.lesson.teacher.BoardView;
import quarterturn.screen.state.Picks;
import quarterturn.screen.state.Scrolling;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Key;

/** What a key does on a board. A pure function of what is shown. */
final class BoardKeys {
  private static final int PAGE = 5;
  private static final String HINT = "? shows the keys.";

  private BoardKeys() {}

  /** The view after a key, and what the board is asked to do. */
  record Next(BoardModel model, BoardAct act) {}

  static Next key(BoardModel model, Key key) {
    if (key instanceof Key.Ctrl ctrl && ctrl.letter() == 'l') {
      return new Next(model, new BoardAct.Repaint());
    }
    if (key.equals(new Key.Function(10))) {
      return new Next(model, new BoardAct.Leave());
    }
    if (key == Key.Named.ESC) {
      return model.layer() == BoardLayer.NONE
          ? show(model.saying("Esc never leaves; q does. " + HINT))
          : show(model.with(BoardLayer.NONE));
    }
    return switch (model.layer()) {
      case NONE -> onBenches(model, key);
      case RELEASE, HOLD, HOLD_ALL -> typing(model, key);
      case LEVEL -> level(model, key);
      case END -> end(model, key);
      case KEYS, BENCH, SPREAD, ORDERS -> reading(model, key);
    };
  }

  private static Next show(BoardModel model) {
    return new Next(model, new BoardAct.None());
  }

  private static boolean help(Key key) {
    return Update.isLetter(key, '?') || key.equals(new Key.Function(1));
  }

  private static Next onBenches(BoardModel model, Key key) {
    List<BoardView.Row> rows = model.sight().view().rows();
    int to = Picks.moved(model.at(), rows.size(), key);
    if (to >= 0 && to != model.at()) {
      return show(model.marking(rows.get(to).bench().bench()));
    }
    if (help(key)) {
      return show(model.with(BoardLayer.KEYS));
    }
    return switch (Update.letter(key)) {
      case 'q' -> new Next(model, new BoardAct.Leave());
      case 's' -> show(model.with(BoardLayer.SPREAD));
      case 'o' -> show(model.with(BoardLayer.ORDERS));
      case 'a' -> show(model.with(BoardLayer.HOLD_ALL));
      case 'g' -> new Next(model, new BoardAct.ReleaseAll());
      case 'w' -> new Next(model, new BoardAct.Sheets());
      case 'e' ->
          show(
              model.sight().ended()
                  ? model.saying("The lesson has been ended. w writes the sheets anew.")
                  : model.with(BoardLayer.END));
      case 'r' -> onBench(model, BoardLayer.RELEASE);
      case 'h' -> onBench(model, BoardLayer.HOLD);
      case 'l' -> onBench(model, BoardLayer.LEVEL);
      default ->
          key == Key.Named.ENTER ? onBench(model, BoardLayer.BENCH) : show(model.saying(HINT));
    };
  }

  private static Next onBench(BoardModel model, BoardLayer layer) {
    BoardView.Row row = model.row();
    if (row == null) {
      return show(model.saying("No bench has joined yet."));
    }
    if (layer == BoardLayer.LEVEL && model.students().isEmpty()) {
      return show(model.saying("No student has come to this bench yet."));
    }
    // Where nothing can be released, the board says why.
    return layer == BoardLayer.RELEASE && model.sight().toRelease(row).isEmpty()
        ? new Next(model, new BoardAct.Release(model.marked(), ""))
        : show(model.with(layer));
  }

  private static Next reading(BoardModel model, Key key) {
    int lines = Scrolling.lines(key, PAGE);
    if (lines != 0 && model.layer() != BoardLayer.KEYS) {
      return show(model.scrolled(lines));
    }
    boolean keys = help(key) && model.layer() != BoardLayer.KEYS;
    return show(model.with(keys ? BoardLayer.KEYS : BoardLayer.NONE));
  }

  private static Next typing(BoardModel model, Key key) {
    if (key.equals(new Key.Function(1))) {
      return show(model.saying("Letters are text here. Enter gives it, Esc goes back."));
    }
    if (key != Key.Named.ENTER) {
      return show(
          model.typed()
              ? model.typing(model.field().with(key))
              : model.saying("Enter lets it go on, Esc goes back."));
    }
    String typed = model.field().text();
    return switch (model.layer()) {
      case HOLD_ALL -> new Next(model, new BoardAct.Hold(null, typed));
      case HOLD -> new Next(model, new BoardAct.Hold(model.marked(), typed));
      default -> new Next(model, new BoardAct.Release(model.marked(), typed));
    };
  }

  private static Next level(BoardModel model, Key key) {
    if (help(key)) {
      return show(model.with(BoardLayer.KEYS));
    }
    int to = Picks.moved(model.pick(), model.students().size(), key);
    if (key == Key.Named.DOWN || key == Key.Named.UP) {
      return show(model.picking(to));
    }
    BoardView.Row row = model.row();
    String student = model.student();
    if (row == null || student.isEmpty()) {
      return show(model.with(BoardLayer.NONE));
    }
    if (key instanceof Key.Typed typed) {
      int number = Character.digit(typed.codePoint(), 10) - 1;
      if (number >= 0 && number < Level.values().length) {
        Level level = Level.values()[number];
        return new Next(model, new BoardAct.SetLevel(model.marked(), student, level, null));
      }
    }
    if (Update.isLetter(key, 'f')) {
      Levels.Standing standing = row.bench().standing(student);
      return new Next(
          model, new BoardAct.SetLevel(model.marked(), student, null, !standing.frozen()));
    }
    return show(model.saying("Mark a student with the arrows; 1 to 4 set a level, f keeps it."));
  }

  private static Next end(BoardModel model, Key key) {
    if (help(key)) {
      return show(model.with(BoardLayer.KEYS));
    }
    if (Update.isLetter(key, 'y')) {
      return new Next(model, new BoardAct.End());
    }
    return show(
        Update.isLetter(key, 'n')
            ? model.with(BoardLayer.NONE)
            : model.saying("y ends the lesson. Esc or n lets it go on."));
  }
}
