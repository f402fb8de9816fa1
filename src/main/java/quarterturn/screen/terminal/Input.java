package quarterturn.screen.terminal;

/** An event from outside for a full-screen face. */
public sealed interface Input {
  record Pressed(Key key) implements Input {}

  /** Text from the terminal, not yet decoded into keys. */
  record Sent(String text) implements Input {}

  /** A change of the terminal's size. */
  record Resized() implements Input {}

  /** Ctrl-Z, passed on to the face where the program could not be stopped. */
  record Suspended() implements Input {}

  /** The program's continuation after a stop. */
  record Continued() implements Input {}

  /**
   * Ctrl-C, or the end of the terminal or the process.
   *
   * @param status the exit status to end with
   */
  record Over(int status) implements Input {}

  /** An exception in another thread. */
  record Broke(Throwable cause) implements Input {}
}
