package quarterturn.screen.state;

import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Key;

/**
 * A command that works in every view: by its letter, or by its function key while text is typed.
 */
public enum Command {
  KEYS('?', 1, "all keys"),
  WHY('w', 2, "why, all hazards"),
  LOG('l', 3, "readings, turns"),
  BACK('b', 4, "take an answer back"),
  PICTURE('p', 5, "larger picture"),
  OVERVIEW('o', 6, "fresh or stale"),
  LINE(':', 7, "readings by name"),
  LEAVE('q', 10, "leave");

  private final char letter;
  private final int function;
  private final String meaning;

  Command(char letter, int function, String meaning) {
    this.letter = letter;
    this.function = function;
    this.meaning = meaning;
  }

  public String meaning() {
    return meaning;
  }

  /** The name of the command's key. */
  public String shown(boolean typing) {
    return typing ? "F" + function : String.valueOf(letter);
  }

  public String both() {
    return letter + " or F" + function;
  }

  /** The command of a key, or null where it has none. */
  static @Nullable Command of(Key key, boolean typing) {
    for (Command command : values()) {
      boolean byFunction =
          key instanceof Key.Function pressed && pressed.number() == command.function;
      if (byFunction || (!typing && Update.isLetter(key, command.letter))) {
        return command;
      }
    }
    return null;
  }
}
