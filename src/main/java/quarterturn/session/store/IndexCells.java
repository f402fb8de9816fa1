package quarterturn.session.store;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One line of the index: cells parted by tabs, an empty one for null. Cells are split by hand,
 * since a folder of ten years has ten thousand such lines.
 */
final class IndexCells {
  private final String line;
  private int at;

  /** The cells of a line, to be taken one after the other. */
  IndexCells(String line) {
    this.line = line;
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

    Out stamp(FileStamp stamp) {
      return text(stamp.sort().name())
          .number(stamp.size())
          .number(stamp.modified())
          .text(stamp.key());
    }

    void end() {
      line.setCharAt(line.length() - 1, '\n');
    }
  }

  /** Whether the line has more cells. */
  boolean more() {
    return at <= line.length();
  }

  /**
   * The next cell's text.
   *
   * @throws IllegalArgumentException where the line has no more
   */
  @Nullable String text() {
    if (at > line.length()) {
      throw new IllegalArgumentException("too few cells");
    }
    int tab = line.indexOf('\t', at);
    int end = tab < 0 ? line.length() : tab;
    String cell = line.substring(at, end);
    at = end + 1;
    return cell.isEmpty() ? null : cell.indexOf('\\') < 0 ? cell : plain(cell);
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
    return text() != null;
  }

  @Nullable Instant time() {
    String text = text();
    if (text == null) {
      return null;
    }
    int dot = text.indexOf('.');
    return dot < 0
        ? Instant.ofEpochSecond(Long.parseLong(text))
        : Instant.ofEpochSecond(
            Long.parseLong(text.substring(0, dot)), Long.parseLong(text.substring(dot + 1)));
  }

  FileStamp stamp() {
    FileStamp.Sort sort = FileStamp.Sort.valueOf(some());
    long size = whole();
    long modified = whole();
    String key = text();
    return new FileStamp(sort, size, modified, key == null ? "" : key);
  }

  double number() {
    return Double.parseDouble(some());
  }

  long whole() {
    return Long.parseLong(some());
  }
}
