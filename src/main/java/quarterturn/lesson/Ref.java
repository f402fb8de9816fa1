package quarterturn.lesson;

import quarterturn.unit.NotUnderstoodException;

/**
 * An event by its writer and its number there. Writers refer to each other's events by this and
 * never by time, since no two clocks in a room agree.
 */
public record Ref(String writer, int n) implements Comparable<Ref> {
  /** Reads a reference as {@link #toString} writes it. */
  public static Ref parse(String text) {
    int at = text.lastIndexOf('#');
    if (at < 1 || !text.substring(at + 1).matches("[1-9]\\d{0,8}")) {
      throw new NotUnderstoodException("it names no event; an event is named like desk-k3f9#7");
    }
    return new Ref(text.substring(0, at), Integer.parseInt(text.substring(at + 1)));
  }

  @Override
  public int compareTo(Ref other) {
    int byWriter = writer.compareTo(other.writer);
    return byWriter != 0 ? byWriter : Integer.compare(n, other.n);
  }

  /** The writer and the number: "desk-k3f9#7". */
  @Override
  public String toString() {
    return writer + "#" + n;
  }
}
