package quarterturn.procedure;

/** A place in a file, line and column counted from one. */
public record Mark(String file, int line, int column) {
  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
