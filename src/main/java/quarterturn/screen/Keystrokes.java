package quarterturn.screen;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;

/** The keys by which a person would give an answer. */
final class Keystrokes {
  private Keystrokes() {}

  static List<Key> of(Prompt prompt, Answer answer) {
    if (prompt instanceof Prompt.Caution) {
      return List.of(new Key.Typed('u'));
    } else if (answer instanceof Answer.Chose chose && prompt instanceof Prompt.Choose choose) {
      List<String> ids = choose.options().stream().map(Prompt.Option::id).toList();
      return marked(ids.indexOf(chose.option()));
    } else if (answer instanceof Answer.Measured measured) {
      return typed(measured.bracket().typed());
    } else if (answer instanceof Answer.Wrote wrote) {
      return typed(wrote.text());
    } else if (answer instanceof Answer.Value value) {
      return typed(Decimals.plain(value.value()));
    } else if (answer instanceof Answer.CannotMeasure) {
      return typed("cannot");
    } else if (answer instanceof Answer.Turned turned && prompt instanceof Prompt.TurnRod asked) {
      return turned(asked, turned);
    } else if (answer instanceof Answer.Undo) {
      return List.of(new Key.Typed('z'));
    }
    return List.of(Key.Named.ENTER);
  }

  /** The arrows reach every answer; the ninth is the last that has a number. */
  private static List<Key> marked(int index) {
    List<Key> keys = new ArrayList<>();
    keys.add(new Key.Typed('1' + Math.min(8, index)));
    for (int i = 8; i < index; i++) {
      keys.add(Key.Named.DOWN);
    }
    keys.add(Key.Named.ENTER);
    return keys;
  }

  private static List<Key> typed(String text) {
    List<Key> keys = new ArrayList<>();
    text.codePoints().forEach(c -> keys.add(new Key.Typed(c)));
    keys.add(Key.Named.ENTER);
    return keys;
  }

  private static List<Key> turned(Prompt.TurnRod asked, Answer.Turned turned) {
    List<Key> keys = new ArrayList<>();
    keys.add(Key.Named.ENTER);
    keys.addAll(marked(List.of(Feel.values()).indexOf(turned.feel())));
    keys.add(new Key.Ctrl('u'));
    if (turned.turn().turns() * asked.turn().turns() < 0) {
      keys.add(Key.Named.TAB);
    }
    keys.addAll(typed(Turns.typedForm(turned.turn())));
    return keys;
  }
}
