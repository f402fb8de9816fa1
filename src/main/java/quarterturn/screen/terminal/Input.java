package quarterturn.screen.terminal;

/** What can happen to a full-screen face from outside. */
public sealed interface Input {
  record Pressed(Key key) implements Input {}

  /** One UTF-16 unit from the terminal, not yet a key. */
  record Unit(int unit) implements Input {}

  /** The terminal has another size. */
  record Resized() implements Input {}

  /** Ctrl-Z; a face hears of it where it does not work. */
  record Suspended() implements Input {}

  /** Taken up again after a stop. */
  record Continued() implements Input {}

  /**
   * Ctrl-C, or the terminal or the process is going away.
   *
   * @param status the exit status to end with
   */
  record Over(int status) implements Input {}

  /** Something broke in another thread. */
  record Broke(Throwable cause) implements Input {}
}
