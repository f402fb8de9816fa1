package quarterturn.session.listing;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One line of the index: cells parted by tabs, an empty one for null. Cells are split by hand,
 * since a folder of ten years has ten thousand such lines.
 */
final class IndexCells {
  private static final int DECIMAL = 10;
  private static final int MOST_DIGITS = 19;

  private final String[] common;
  private final String text;
  private final int end;
  private int at;

  /**
   * The cells of a line, which is a part of a text, to be taken one after the other.
   *
   * @param common texts of earlier lines by a small hash, so that equal cells share one object
   */
  IndexCells(String text, int from, int end, String[] common) {
    this.common = common;
    this.text = text;
    this.at = from;
    this.end = end;
  }

  /** Puts cells into a line. */
  static final class Out {
    private final StringBuilder line;

    Out(StringBuilder line) {
      this.line = line;
    }

    Out text(@Nullable String text) {
      for (int i = 0; text != null && i < text.length(); i++) {
        char c = text.charAt(i);
        if (c == '\t' || c == '\n' || c == '\\') {
          line.append('\\').append(c == '\t' ? 't' : c == '\n' ? 'n' : '\\');
        } else {
          line.append(c);
        }
      }
      line.append('\t');
      return this;
    }

    Out number(@Nullable Number number) {
      return text(number == null ? null : number.toString());
    }

    Out yes(boolean yes) {
      return text(yes ? "y" : null);
    }

    /** A time as seconds since 1970, with its nanoseconds where it has some. */
    Out time(@Nullable Instant at) {
      return at == null
          ? text(null)
          : text(at.getEpochSecond() + (at.getNano() == 0 ? "" : "." + at.getNano()));
    }

    Out stamp(IndexStamp stamp) {
      return text(stamp.sort().name())
          .number(stamp.size())
          .number(stamp.modified())
          .number(stamp.key());
    }

    void end() {
      line.setCharAt(line.length() - 1, '\n');
    }
  }

  /** Whether the line has more cells. */
  boolean more() {
    return at <= end;
  }

  /**
   * The end of the next cell, which is then behind.
   *
   * @throws IllegalArgumentException where the line has no more
   */
  private int passed() {
    if (!more()) {
      throw new IllegalArgumentException("too few cells");
    }
    int tab = text.indexOf('\t', at);
    int to = tab < 0 || tab > end ? end : tab;
    at = to + 1;
    return to;
  }

  /** The next cell's text. */
  @Nullable String text() {
    int from = at;
    int to = passed();
    if (to == from) {
      return null;
    }
    String cell = common(from, to);
    return cell.indexOf('\\') < 0 ? cell : plain(cell);
  }

  private String common(int from, int to) {
    int length = to - from;
    int sum = length + text.charAt(from) + text.charAt(from + length / 2) + text.charAt(to - 1);
    int place = sum % common.length;
    String cell = common[place];
    if (cell == null || cell.length() != length || !text.startsWith(cell, from)) {
      cell = text.substring(from, to);
      common[place] = cell;
    }
    return cell;
  }

  private static String plain(String cell) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c == '\\' && i + 1 < cell.length()) {
        i++;
        c = cell.charAt(i) == 't' ? '\t' : cell.charAt(i) == 'n' ? '\n' : '\\';
      }
      out.append(c);
    }
    return out.toString();
  }

  /** The next cell's text, which is not null. */
  String some() {
    String text = text();
    if (text == null) {
      throw new IllegalArgumentException("an empty cell");
    }
    return text;
  }

  boolean yes() {
    int from = at;
    return passed() > from;
  }

  @Nullable Instant time() {
    int from = at;
    int to = passed();
    if (to == from) {
      return null;
    }
    int dot = from;
    while (dot < to && text.charAt(dot) != '.') {
      dot++;
    }
    return Instant.ofEpochSecond(whole(from, dot), dot == to ? 0 : whole(dot + 1, to));
  }

  IndexStamp stamp() {
    IndexStamp.Sort sort = IndexStamp.Sort.valueOf(some());
    long size = whole();
    long modified = whole();
    return new IndexStamp(sort, size, modified, (int) whole());
  }

  double number() {
    return Double.parseDouble(some());
  }

  long whole() {
    int from = at;
    return whole(from, passed());
  }

  private long whole(int from, int to) {
    boolean minus = from < to && text.charAt(from) == '-';
    int first = minus ? from + 1 : from;
    if (first == to || to - first > MOST_DIGITS) {
      throw new IllegalArgumentException("no whole number");
    }
    long whole = 0;
    for (int i = first; i < to; i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit >= DECIMAL) {
        throw new IllegalArgumentException("no digit");
      }
      whole = whole * DECIMAL + digit;
    }
    return minus ? -whole : whole;
  }
}
