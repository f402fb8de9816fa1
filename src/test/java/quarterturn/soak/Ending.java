package quarterturn.soak;

/** What ends a round. */
enum Ending {
  QUIT,
  END_OF_INPUT,
  CTRL_C,
  TERM,
  HUP,
  KILL,
  /** No file can grow beyond a size near that of the largest. */
  FULL_DISK,
  /** What it prints can't be written. */
  FULL_OUTPUT,
  HANG_UP;

  /** Whether the program is to leave the terminal as it was. */
  boolean inOrder() {
    return this != KILL && this != HANG_UP && this != HUP;
  }
}
