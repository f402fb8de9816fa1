package quarterturn.screen;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Level;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.lesson.teacher.DeskView;
import quarterturn.screen.state.Effect;
import quarterturn.screen.state.Picks;
import quarterturn.screen.state.Scrolling;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.Pasted;

/** Handles the keys of a desk: each changes the view or gives a line to the dialogue. */
final class DeskKeys {
  private static final int PAGE = 5;
  private static final String HINT = "? shows the keys.";
  private static final Effect NONE = new Effect.None();

  private final DeskDialogue dialogue;
  private DeskModel model;

  DeskKeys(DeskDialogue dialogue) {
    this.dialogue = dialogue;
    this.model = DeskModel.of(dialogue.shown());
  }

  /** An action that gives an order, or begins the question for what the order needs. */
  private interface Order {
    Dialogue.Taken give() throws RefusedException;
  }

  DeskModel model() {
    return model;
  }

  /** Limits how far the view is scrolled down. */
  void scrolledAtMost(int most) {
    model = model.scrolledTo(Math.min(model.scroll(), most));
  }

  /** Reads the benches' files and shows what is new. */
  void look() {
    List<String> news = dialogue.news();
    model = model.seeing(dialogue.shown(), dialogue.asked());
    if (!news.isEmpty()) {
      say(String.join(" ", news));
    }
  }

  void say(String words) {
    model = model.saying(words);
  }

  private void show(DeskLayer layer) {
    model = model.with(layer);
  }

  private void give(Order order) {
    String said;
    try {
      said = String.join(" ", order.give().told());
    } catch (RefusedException refused) {
      said = String.valueOf(refused.getMessage());
    }
    look();
    say(said);
  }

  Effect key(Key key) {
    if (key instanceof Key.Ctrl ctrl && ctrl.letter() == 'l') {
      return new Effect.Repaint();
    }
    Question asked = model.asked();
    if (key instanceof Key.Paste) {
      paste(asked, key);
      return NONE;
    }
    boolean benches = asked == null && model.layer() == DeskLayer.NONE;
    if (key.equals(new Key.Function(10)) || (benches && Update.isLetter(key, 'q'))) {
      return new Effect.Leave();
    }
    if (key == Key.Named.ESC) {
      escape(benches);
    } else if (asked != null) {
      answering(asked, key);
    } else if (benches) {
      onBenches(key);
    } else if (Scrolling.lines(key, PAGE) != 0 && model.layer() != DeskLayer.LEVEL) {
      model = model.scrolledTo(model.scroll() + Scrolling.lines(key, PAGE));
    } else if (help(key)) {
      show(model.layer() == DeskLayer.KEYS ? DeskLayer.NONE : DeskLayer.KEYS);
    } else if (model.layer() == DeskLayer.LEVEL) {
      level(key);
    } else {
      show(DeskLayer.NONE);
    }
    return NONE;
  }

  private void paste(@Nullable Question asked, Key key) {
    if (asked instanceof Question.Asked) {
      String refusal = model.field().refusal(key);
      model = model.typing(model.field().with(key)).saying(refusal);
    } else {
      say(Pasted.NOWHERE);
    }
  }

  private void escape(boolean benches) {
    dialogue.back();
    show(DeskLayer.NONE);
    if (benches) {
      say("Esc never leaves; q does. " + HINT);
    }
  }

  private static boolean help(Key key) {
    return Update.isLetter(key, '?') || key.equals(new Key.Function(1));
  }

  private void answering(Question asked, Key key) {
    int lines = Scrolling.lines(key, PAGE);
    String answer = Picks.answer(asked, model.field(), key);
    if (answer != null) {
      give(() -> dialogue.take(answer));
    } else if (lines != 0) {
      model = model.scrolledTo(model.scroll() + lines);
    } else if (key.equals(new Key.Function(1)) || !(asked instanceof Question.Asked)) {
      say(asked.help() + " Esc goes back.");
    } else {
      model = model.typing(model.field().with(key));
    }
  }

  private void onBenches(Key key) {
    List<DeskView.Row> rows = model.sight().view().rows();
    int to = Picks.moved(model.at(), rows.size(), key);
    if (to >= 0 && to != model.at()) {
      model = model.marking(rows.get(to).bench().bench());
      return;
    }
    if (help(key)) {
      show(DeskLayer.KEYS);
      return;
    }
    int letter = Update.letter(key);
    switch (letter) {
      case 's' -> show(DeskLayer.SPREAD);
      case 'o' -> show(DeskLayer.ORDERS);
      case 'a' -> give(() -> dialogue.hold(null));
      case 'g' -> give(() -> dialogue.take("release all"));
      case 'w' -> give(() -> dialogue.take("sheets"));
      case 'e' -> give(() -> dialogue.take("end"));
      default -> {
        if (key == Key.Named.ENTER
            || letter == 'r'
            || letter == 'h'
            || letter == 'l'
            || letter == 'm') {
          onBench(letter);
        } else {
          say(HINT);
        }
      }
    }
  }

  private void onBench(int letter) {
    DeskView.Row row = model.row();
    if (row == null) {
      say("No bench has joined yet.");
    } else if (letter == 'r') {
      give(() -> dialogue.release(row));
    } else if (letter == 'h') {
      give(() -> dialogue.hold(row));
    } else if (letter == 'm') {
      give(() -> dialogue.missed(row));
    } else if (letter == 'l' && model.students().isEmpty()) {
      say("No student has come to this bench yet.");
    } else {
      show(letter == 'l' ? DeskLayer.LEVEL : DeskLayer.BENCH);
    }
  }

  private void level(Key key) {
    DeskView.Row row = model.row();
    String student = model.student();
    int number = key instanceof Key.Typed typed ? Character.digit(typed.codePoint(), 10) - 1 : -1;
    if (key == Key.Named.DOWN || key == Key.Named.UP) {
      model = model.picking(Picks.moved(model.pick(), model.students().size(), key));
    } else if (row == null || student.isEmpty()) {
      show(DeskLayer.NONE);
    } else if (number >= 0 && number < Level.values().length) {
      give(() -> dialogue.level(row, student, Level.values()[number], null));
    } else if (Update.isLetter(key, 'f')) {
      boolean frozen = row.bench().standing(student).frozen();
      give(() -> dialogue.level(row, student, null, !frozen));
    } else {
      say("Mark a student with the arrows; 1 to 4 set a level, f keeps it.");
    }
  }
}
