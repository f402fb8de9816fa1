package quarterturn.screen.state;

import java.util.ArrayList;
import java.util.List;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;

/** The keys that a person would press to give an answer. */
final class Keystrokes {
  private Keystrokes() {}

  static List<Key> of(Prompt prompt, Answer answer) {
    return answer.match(
        new Answer.Cases<>(
            confirmed ->
                List.of(prompt instanceof Prompt.Caution ? new Key.Typed('u') : Key.Named.ENTER),
            wrote -> typed(wrote.text()),
            chose -> marked(index((Prompt.Choose) prompt, chose.option())),
            measured -> typed(measured.bracket().typed()),
            value -> typed(Decimals.plain(value.value())),
            cannot -> typed("cannot"),
            turned -> turned((Prompt.TurnRod) prompt, turned),
            felt -> List.of(Key.Named.ENTER),
            undo -> List.of(new Key.Typed('z')),
            waited -> List.of(Key.Named.ENTER),
            correct -> List.of(new Key.Function(4)),
            differs -> List.of()));
  }

  private static int index(Prompt.Choose choose, String option) {
    return choose.options().stream().map(Prompt.Option::id).toList().indexOf(option);
  }

  /** The keys that mark an option by its number, and take it. */
  private static List<Key> marked(int index) {
    return typed(String.valueOf(index + 1));
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
    if (turned.turn().turns() * asked.turn().turns() < 0) {
      keys.add(Key.Named.TAB);
    }
    for (int i = 0; i <= turned.feel().ordinal(); i++) {
      keys.add(Key.Named.DOWN);
    }
    keys.addAll(typed(Turns.typedForm(turned.turn())));
    return keys;
  }
}
